import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { readForm } from '../../server/src/pdf/form/readForm';
import { type Entries, fillForm } from '../sheet/fixtures/fillForm';
import { fillInReader } from '../sheet/fixtures/fillInReader';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep(
  '- tighten: cap-nut\n  with: torque-wrench-10\n- measure: end-play\n  with: dial-gauge\n- record: What was seen',
);
const PLAY = 'only-step/2/reading/1/1/1';
const TORQUE = 'only-step/1/actual';

let empty: Uint8Array;
/** Everything filled in, and every value within its limits. */
let entries: Record<string, boolean | string>;

beforeAll(async () => {
  const folder = sourceFolder();
  const target = join(folder, 'form.pdf');
  const { code, err } = await ran(
    'sheet',
    join(folder, EXAMPLE_PATHS.procedure),
    '--build',
    'k1-a',
    '--fillable',
    '-o',
    target,
  );
  expect([code, err]).toEqual([0, '']);
  empty = readFileSync(target);
  const form = await readForm(empty);
  if ('problem' in form) throw new Error(form.problem);
  const asked = form.plan.fields.filter((field) => field.need.kind === 'always' && field.kind !== 'signature');
  entries = Object.fromEntries(
    asked.map((field) => [
      field.name,
      field.kind === 'choice' ? field.name.endsWith('/1') : field.kind === 'tick' || '1',
    ]),
  );
  entries[PLAY] = '0.05';
  entries[TORQUE] = '4.6';
}, 60_000);

const kept = mkdtempSync(join(tmpdir(), 'witnessmark-record-'));
afterAll(() => rmSync(kept, { recursive: true, force: true }));

/** A folder that every test of this file prints from. */
function sourceFolder(): string {
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(kept, path)), { recursive: true });
    writeFileSync(join(kept, path), text);
  }
  return kept;
}

async function filledFile(more: Entries = {}): Promise<string> {
  const path = join(temporaryFiles({}), 'filled.pdf');
  writeFileSync(path, await fillForm(empty, { ...entries, ...more }));
  return path;
}

async function record(path: string, ...more: string[]) {
  return ran('record', path, '--signatures', 'optional', ...more);
}

describe('a filled sheet', () => {
  test('that is whole and within its limits is in order', async () => {
    const { code, out, err } = await record(await filledFile());
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('OP-9 revision A, K1-A (k1-a); printed as draft');
    expect(out).toMatch(/2 values within limits, nothing missing/u);
  });

  test.each([
    ['0,05', 0],
    ['0.002 in', 0],
    ['0.12', 1],
    ['0,12 mm', 1],
    ['about right', 1],
    ['', 1],
  ])('with an end play of "%s" ends with %i', async (typed, expected) => {
    expect((await record(await filledFile({ [PLAY]: typed }))).code).toBe(expected);
  });

  test('says which value is outside of what', async () => {
    const { out } = await record(await filledFile({ [PLAY]: '0,12', [TORQUE]: '3' }));
    expect(out).toContain('Step 1.2 End play "0,12" outside: above 0.04 to 0.09 mm');
    expect(out).toMatch(/Step 1\.1 Actual torque, .*ap nut "3" outside: below 4\.6 ± 0\.3 N·m/u);
    expect(out).toContain('2 outside; 0 values within limits');
  });

  test('is read just so where another reader has filled it in and saved it', async () => {
    const path = join(temporaryFiles({}), 'filled.pdf');
    writeFileSync(path, await fillInReader(empty, { ...entries, [PLAY]: '0,05 mm' }));
    const { code, out } = await record(path);
    expect([code, out]).toEqual([0, expect.stringMatching(/2 values within limits, nothing missing/u)]);
  });

  test('lacks a tick', async () => {
    const { code, out } = await record(await filledFile({ 'only-step/1/done': false }));
    expect(code).toBe(1);
    expect(out).toMatch(/Step 1\.1 Done: Tighten .* missing/u);
  });

  test('that was never filled in lacks everything', async () => {
    const path = join(temporaryFiles({}), 'empty.pdf');
    writeFileSync(path, empty);
    const { code, out } = await record(path);
    expect(code).toBe(1);
    expect(out).toMatch(/\d+ missing; 0 values within limits/u);
  });
});

describe('as JSON', () => {
  test('it says of which document, build and text it is, and everything of each field', async () => {
    const { out } = await record(await filledFile({ [PLAY]: '0,05' }), '--format', 'json');
    const [sheet] = JSON.parse(out);
    expect(sheet).toMatchObject({ document: 'OP-9', revision: 'A', buildId: 'k1-a', status: 'draft', inOrder: true });
    expect(sheet.digest).toMatch(/^[0-9a-f]{64}$/u);
    expect(sheet.fields.find((field: { name: string }) => field.name === PLAY)).toEqual({
      name: PLAY,
      place: 'Step 1.2',
      stepId: 'only-step',
      what: 'End play',
      kind: 'value',
      filled: '0,05',
      value: 0.05,
      unit: 'mm',
      limits: '0.04 to 0.09 mm',
      verdict: 'within',
      why: null,
      inOrder: true,
    });
  });
});

describe('as CSV', () => {
  const rowOf = (out: string, name: string) => out.split('\r\n').find((row) => row.includes(`,${name},`)) ?? '';

  test('every line ends with CR LF and has as many cells as the head', async () => {
    const { out } = await record(await filledFile(), '--format', 'csv');
    expect(out.endsWith('\r\n')).toBe(true);
    expect(out.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/u);
    const [head = '', first = ''] = out.split('\r\n');
    expect(cellsOf(first)).toHaveLength(cellsOf(head).length);
  });

  test('what a spreadsheet would compute becomes words, and a number stays one', async () => {
    const written = 'only-step/3/record/1';
    const formula = await record(await filledFile({ [written]: '=HYPERLINK("x")' }), '--format', 'csv');
    expect(cellsOf(rowOf(formula.out, written))).toContain(`'=HYPERLINK("x")`);
    const negative = await record(await filledFile({ [PLAY]: '-0.02' }), '--format', 'csv');
    expect(cellsOf(rowOf(negative.out, PLAY))).toEqual(expect.arrayContaining(['-0.02', 'outside']));
    expect(rowOf(negative.out, PLAY)).not.toContain("'-0.02");
  });

  test('commas, quotes and line ends stand in quotes', async () => {
    const written = 'only-step/3/record/1';
    const { out } = await record(await filledFile({ [written]: 'a, "b"' }), '--format', 'csv');
    expect(out).toContain(',"a, ""b""",');
  });
});

/** The cells of a line without line ends in it, read by the letter of RFC 4180. */
function cellsOf(row: string): string[] {
  return [...row.matchAll(/(?:^|,)(?:"((?:[^"]|"")*)"|([^,]*))/gu)].map(([, quoted, plain]) =>
    quoted === undefined ? (plain ?? '') : quoted.replaceAll('""', '"'),
  );
}

describe('what cannot be read', () => {
  test.each([['no PDF', 'hello', 'it is no PDF that can be read']])(
    '%s is told, and the others are read',
    async (_, content, why) => {
      const bad = join(temporaryFiles({ 'bad.pdf': content }), 'bad.pdf');
      const good = await filledFile();
      const { code, out, err } = await record(bad, good);
      expect(code).toBe(2);
      expect(err).toContain(why);
      expect(out).toContain('OP-9');
    },
  );

  test('a sheet for paper has nothing to read', async () => {
    const folder = temporaryFiles(files);
    const target = join(folder, 'paper.pdf');
    await ran('sheet', join(folder, EXAMPLE_PATHS.procedure), '--build', 'k1-a', '-o', target);
    const { code, err } = await record(target);
    expect([code, err]).toEqual([2, expect.stringContaining('it was not printed with --fillable')]);
  }, 30_000);

  test('a file that is not there is one line', async () => {
    const { code, err } = await record('/nowhere/filled.pdf');
    expect([code, err]).toEqual([2, 'witnessmark: Cannot read /nowhere/filled.pdf: there is no such file or folder\n']);
  });
});
