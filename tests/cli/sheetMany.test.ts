import { chmodSync, existsSync, mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { run } from '../../server/src/cli/main';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: cap-nut\n- measure: end-play');
const SECOND = 'procedures/op-10.procedure.yaml';
const both = { ...files, [SECOND]: files[EXAMPLE_PATHS.procedure]?.replace('OP-9', 'OP-10') ?? '' };

function folders(given: Readonly<Record<string, string>> = files): { folder: string; out: string; procedure: string } {
  const folder = temporaryFiles(given);
  const out = join(folder, 'out');
  mkdirSync(out);
  return { folder, out, procedure: join(folder, EXAMPLE_PATHS.procedure) };
}

describe('many sheets', () => {
  test('every build of every procedure of a folder is a file, and they are counted', async () => {
    const { folder, out } = folders(both);
    const { code, out: said, err } = await ran('sheet', join(folder, 'procedures'), '--all-builds', '--out', out);
    expect([code, err]).toEqual([0, '']);
    expect(readdirSync(out).sort()).toEqual([
      'op-10-k1-a-big-wheel.pdf',
      'op-10-k1-a.pdf',
      'op-10-k1-b.pdf',
      'op-9-k1-a-big-wheel.pdf',
      'op-9-k1-a.pdf',
      'op-9-k1-b.pdf',
    ]);
    expect(said).toMatch(/^6 sheets written/mu);
  }, 60_000);

  test('one that cannot be printed is told, and does not hold up the others', async () => {
    const { folder, out, procedure } = folders({ ...files, [SECOND]: '{' });
    const more = await ran('sheet', join(folder, SECOND), procedure, '--build', 'k1-a', '--out', out);
    expect(more.code).toBe(2);
    expect(more.err).toContain('op-10.procedure.yaml');
    expect(more.out).toMatch(/1 sheet written.*, 1 failed/u);
    expect(readdirSync(out)).toEqual(['op-9-k1-a.pdf']);
  }, 60_000);

  test('progress is shown to whoever looks on, and gone at the end', async () => {
    const { out, procedure } = folders();
    let err = '';
    const terminal = { out: () => {}, err: (text: string) => (err += text), colours: false, isShown: true };
    await run(terminal, ['sheet', procedure, '--all-builds', '--out', out]);
    expect(err).toMatch(/Printing 1 of 3: /u);
    expect(err).toMatch(/\r +\r$/u);
  }, 60_000);
});

describe('a clear line says', () => {
  test.each([
    [
      'which builds there are, where none is named',
      [],
      /Say which build .*; there are k1-a \| k1-b \| k1-a,big-wheel/u,
    ],
    ['which builds there are, where another is named', ['--build', 'k2'], /--build k2: .*; there are k1-a \| /u],
    [
      'that one build and all do not go together',
      ['--all-builds', '--build', 'k1-a'],
      /--build or --all-builds, not both/u,
    ],
    ['that a page has no fields', ['--build', 'k1-a', '--fillable', '-o', 'x.html'], /--fillable is for a PDF/u],
    ['that a chart is one', ['--chart', '--all-builds'], /one procedure and one build/u],
  ])('%s', async (_, more, message) => {
    const { code, out, err } = await ran('sheet', folders().procedure, ...more);
    expect([code, out]).toEqual([2, '']);
    expect(err).toMatch(message);
  });

  test('that the folder is not there', async () => {
    const { folder, procedure } = folders();
    const missing = join(folder, 'nowhere');
    const one = await ran('sheet', procedure, '--build', 'k1-a', '-o', join(missing, 'sheet.pdf'));
    const all = await ran('sheet', procedure, '--all-builds', '-o', missing);
    for (const { code, err } of [one, all]) {
      expect(code).toBe(2);
      expect(err).toMatch(/There is no folder .*nowhere; make it first/u);
    }
    expect(existsSync(missing)).toBe(false);
  });

  test('that several sheets do not go to one file', async () => {
    const { code, err } = await ran('sheet', folders().procedure, '--all-builds', '-o', 'all.pdf');
    expect([code, err]).toEqual([2, expect.stringContaining('Several sheets go to a folder')]);
  });

  test.skipIf(process.getuid?.() === 0)('that nothing may be written there, and leaves nothing', async () => {
    const { out, procedure } = folders();
    chmodSync(out, 0o555);
    const { code, err } = await ran('sheet', procedure, '--build', 'k1-a', '-o', join(out, 'sheet.html'));
    expect([code, err]).toEqual([2, expect.stringContaining('permission denied')]);
    expect(readdirSync(out)).toEqual([]);
  });

  test('which figure has no drawing, and prints its words', async () => {
    const shown: Record<string, string> = { ...inStep('- say: Look.\n  figure: section').files };
    shown[EXAMPLE_PATHS.procedure] +=
      '\nfigures:\n  section: { file: ../figures/none.svg, alt: The cover in section }\n';
    const { out, procedure } = folders(shown);
    const { code, err } = await ran('sheet', procedure, '--build', 'k1-a', '-o', join(out, 'sheet.html'));
    expect(code).toBe(0);
    expect(err).toContain('the figure section (../figures/none.svg) has no drawing');
  });

  test('which figure the engine cannot draw', async () => {
    const shown: Record<string, string> = {
      ...inStep('- say: Look.\n  figure: section').files,
      'figures/broken.svg': '<svg xmlns="http://www.w3.org/2000/svg"><g>',
    };
    shown[EXAMPLE_PATHS.procedure] +=
      '\nfigures:\n  section: { file: ../figures/broken.svg, alt: The cover in section }\n';
    const { out, procedure } = folders(shown);
    const { code, err } = await ran('sheet', procedure, '--build', 'k1-a', '-o', join(out, 'sheet.pdf'));
    expect(code).toBe(2);
    expect(err).toContain('section');
    expect(readdirSync(out)).toEqual([]);
  }, 30_000);
});
