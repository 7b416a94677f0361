import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const { procedure, family } = EXAMPLE_PATHS;
const EXAMPLE = inStep(
  '- tighten: cap-nut\n  torque: 46 ± 3 N·m\n  with: [torque-wrench-10, socket-8]\n- wait: 20 min',
);

/** The place of a word in a document of the example, as `:LINE:COLUMN`. */
function placeOf(path: string, word: string): string {
  const before = (EXAMPLE.files[path] ?? '').split(word)[0] ?? '';
  const line = before.split('\n').length;
  return `:${line}:${before.length - before.lastIndexOf('\n')}`;
}

function lineOf(path: string, word: string): string {
  return placeOf(path, word).replace(/:\d+$/, '');
}

describe('explain --at', () => {
  test('shows how the value at a place is worked out', async () => {
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const { code, out } = await ran('explain', '--at', `${file}${placeOf(procedure, '46 ±')}`);
    expect(code).toBe(0);
    expect(out).toMatch(/^Torque of the cap nut\n {2}Stated +46 ± 3 N·m\n/);
    expect(out).toMatch(/\n {2}Allows +43 to 49 N·m, ± 6\.5 %\n/);
    expect(out).toContain('the number would be right in lbf·in');
    expect(out).toContain('A_s = π/4·(d − 0.9382·P)² = π/4·(5 − 0.9382·0.8)² = 14.2 mm²\n');
    expect(out).toContain('\n  Not known: the property class of the cap nut\n  Sources: ');
    expect(out.split('\n').filter((line) => [...line].length > 100 && !line.includes('√'))).toEqual([]);
  });

  test('shows everything on a line where no column is named', async () => {
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const { out } = await ran('explain', '--at', `${file}${lineOf(procedure, 'with: [')}`);
    expect(out).toContain('Torque wrench 2–10 N·m for 46 ± 3 N·m\n');
    expect(out).toContain('Size of tool for the cap nut\n');
    const wait = await ran('explain', '--at', `${file}${lineOf(procedure, 'wait')}`);
    expect(wait.out).toBe('Time 20 min\n  In s  1200 s\n  In h  0.333 h\n');
  });

  test('narrows to a build', async () => {
    const torque = '{ k1-a: 4.4 N·m, k1-b: 4.8 N·m }';
    const files = { ...EXAMPLE.files, [family]: (EXAMPLE.files[family] ?? '').replace('4.6 ± 0.3 N·m', torque) };
    const at = `${join(temporaryFiles(files), family)}${placeOf(family, 'torque: 4.6')}`;
    const all = await ran('explain', '--at', at);
    const one = await ran('explain', '--at', at, '--build', 'k1-b');
    expect(all.out).toContain('4.4 N·m');
    expect(one.out).toContain('4.8 N·m');
    expect(one.out).not.toContain('4.4 N·m');
  });

  test.each([
    ['no line', 'F', '--at takes FILE:LINE or FILE:LINE:COLUMN, as check writes it, not "'],
    ['a line that is not there', 'F:900', 'has no line 900; it has '],
    ['line 0', 'F:0', 'has no line 0; it has '],
    ['a column that is not there', 'F:1:90', 'has no column 90; it has 14 characters'],
    ['a place with nothing to work out', 'F:1', 'Nothing to work out at '],
    ['a file that is not there', 'nowhere.procedure.yaml:1', 'Cannot read nowhere.procedure.yaml: '],
    ['a file that is no document', 'package.json:1', 'package.json is no document of ours by its name'],
  ])('with %s is one clear line and exit code 2', async (_, at, message) => {
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const { code, out, err } = await ran('explain', '--at', at.replace(/^F/, file));
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^witnessmark: [^\n]*\n$/);
    expect(err).toContain(message);
  });

  test.each([
    [['torque-unit-missing', '--at', 'F:1'], 'Name a rule or a place, not both'],
    [['--build', 'k1-a'], '--build goes with --at, which says where'],
    [['--at', 'F:17', '--build', 'k1-z'], '--build k1-z: '],
  ])('%j is told what is wrong', async (args, message) => {
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const { code, err } = await ran('explain', ...args.map((one) => one.replace(/^F/, file)));
    expect(code).toBe(2);
    expect(err).toContain(message);
  });
});

describe('check with the working', () => {
  test('shows it indented below a finding only where it is asked for', async () => {
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const plain = await ran('check', file);
    const { code, out } = await ran('check', file, '--working');
    expect(code).toBe(1);
    expect(plain.out).not.toContain('Range of the tool');
    expect(out).toMatch(/\n\n {4}Torque wrench 2–10 N·m for 46 ± 3 N·m\n {6}Range of the tool +2\.\.10 N·m\n/);
  });

  test('is in the JSON report and in the SARIF log', async () => {
    const RULE = 'torque-tool-out-of-range';
    const file = join(temporaryFiles(EXAMPLE.files), procedure);
    const json = JSON.parse((await ran('check', file, '--format', 'json')).out);
    const finding = json.documents[0].findings.find((one: { rule: string }) => one.rule === RULE);
    expect(Object.keys(finding.working[0])).toEqual(['title', 'builds', 'rows', 'steps', 'missing', 'sources']);
    const sarif = JSON.parse((await ran('check', file, '--format', 'sarif')).out);
    const result = sarif.runs[0].results.find((one: { ruleId: string }) => one.ruleId === RULE);
    expect(result.message.markdown).toContain('\n\n| Torque wrench 2–10 N·m for 46 ± 3 N·m |');
    expect(result.properties.working[0].title).toBe(finding.working[0].title);
  });
});
