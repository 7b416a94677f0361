import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { shortRepeats } from '../../server/src/core/ide/shortRepeats';
import { workingsAt } from '../../server/src/core/ide/workingsAt';
import { type CheckResult, checkDocument } from '../../server/src/core/rules/checkDocument';
import { type Example, inFamily, inStep, withFamily } from '../../server/src/core/rules/examples';
import { step } from '../../server/src/core/standards/calculation';
import type { Working } from '../../server/src/core/workings/working';
import { workingMarkdown } from '../../server/src/core/workings/workingMarkdown';
import { workingText, workingTitle } from '../../server/src/core/workings/workingText';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';
import { openFiles } from '../support/memoryFiles';

/** The workings at the first place of a word in the example's document. */
async function at(example: Example, word: string, options: { build?: string; checked?: boolean } = {}) {
  const { workspace, document } = await openFiles(example.files, example.at);
  const { snapshot } = workspace;
  const start = document.text.indexOf(word) + 1;
  const findings = options.checked === true ? checkDocument(snapshot, document, { today: TODAY }).findings : [];
  const build = options.build === undefined ? {} : { build: options.build };
  return workingsAt({ snapshot, document, span: { start, end: start }, findings, ...build })?.workings ?? [];
}

function titles(workings: readonly Working[]): string[] {
  return workings.map(workingTitle);
}

const FAMILY = `parts:
  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], mass: 120 g, fit: { with: core, bore: bore, shaft: seat } }
  cover-seal: { name: cover seal, kind: o-ring, sits-on: core, seals: cover, section: 1.78 mm, groove: { depth: 1.3 mm } }
dimensions: { bore: 5.000..5.005 mm, seat: 5.001..5.007 mm }
limits: { end-play: { name: end play, accept: 0.04..0.09 mm }, play: { name: play, accept: -0.01..0.01 mm, from: [+bore, -seat] } }
balance-groups: { rotor: { name: rotor, members: [wheel], grade: G 6.3 } }`;

test('what is the same on other builds is told only once', () => {
  const steps = [step('d', 'diameter', 'given', 5, 'mm')];
  const rows = (hand: string) => [
    { label: 'stated', text: '5 N·m' },
    { label: 'hand', text: hand },
  ];
  const one = { title: 'torque', builds: 'K1-A', rows: rows('right'), steps, missing: [], sources: ['x'] };
  const other = { ...one, builds: 'K1-B', rows: rows('left') };
  expect(shortRepeats([one, other])).toEqual([
    one,
    {
      ...other,
      rows: [
        { label: 'hand', text: 'left' },
        { label: 'the rest', text: 'as on K1-A' },
      ],
      steps: [],
      sources: [],
    },
  ]);
  const unlike = { ...other, steps: [...steps, ...steps] };
  expect(shortRepeats([one, unlike])).toEqual([one, unlike]);
});

describe('the workings at a place', () => {
  test.each([
    ['bore: bore', ['Fit of the wheel and the core']],
    ['1.78', ['Squeeze of the cover seal']],
    ['depth', ['Squeeze of the cover seal']],
    ['-0.01..', ['Stack-up of the play']],
    ['G 6.3', ['Permissible unbalance of the rotor']],
    ['5.000', ['Length 5.000 to 5.005 mm', 'Stack-up of the play', 'Fit of the wheel and the core']],
    ['120 g', ['Mass 120 g']],
    ['cover seal', []],
  ])('of a family at %s', async (word, expected) => {
    expect(titles(await at(inFamily(FAMILY), word))).toEqual(expected);
  });

  test.each([
    ['torque-wrench-10', ['Torque wrench 2–10 N·m for 4.6 ± 0.3 N·m']],
    ['socket-8', ['Size of tool for the cap nut']],
    ['end-play', ['Limit of the end play']],
    ['dial-gauge', ['Dial gauge for the end play']],
    ['rotor', ['Permissible unbalance of the rotor']],
    ['20 min', ['Time 20 min']],
    ['300 °F', ['Temperature 300 °F']],
  ])('of a procedure at %s', async (word, expected) => {
    const steps = inStep(`- tighten: cap-nut
  with: [torque-wrench-10, socket-8]
- measure: end-play
  with: dial-gauge
- balance: rotor
- wait: 20 min
- Keep it below 300 °F`);
    // The head of the procedure lists the tools as well, where there is nothing to hold them against.
    const inSteps = { ...steps, files: withFamily(steps, FAMILY).files };
    const text = inSteps.files[inSteps.at] ?? '';
    const body = text.slice(text.indexOf('phases:'));
    const { workspace, document } = await openFiles(inSteps.files, inSteps.at);
    const start = text.indexOf('phases:') + body.indexOf(word) + 1;
    const there = workingsAt({ snapshot: workspace.snapshot, document, span: { start, end: start }, findings: [] });
    expect(titles(there?.workings ?? [])).toEqual(expected);
  });

  test('are those of the value that is pointed at, and of all at the key', async () => {
    const parts =
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, torque: { k1-a: 4 N·m, k1-b: 5 N·m } }';
    expect(titles(await at(inFamily(parts), '5 N·m'))).toEqual(['Torque of the cap nut (K1-B)']);
    expect(titles(await at(inFamily(parts), 'torque: { k1-a'))).toEqual([
      'Torque of the cap nut (K1-A)',
      'Torque of the cap nut (K1-B)',
    ]);
    expect(titles(await at(inFamily(parts), 'torque: { k1-a', { build: 'k1-a' }))).toEqual([
      'Torque of the cap nut (K1-A)',
    ]);
  });

  test('hold the working of a finding there, once', async () => {
    const strange = inStep('- tighten: cap-nut\n  torque: 46 ± 3 N·m\n  with: [torque-wrench-10, socket-8]');
    const whole = (workings: readonly Working[]) => workings.filter(({ steps }) => steps.length > 0).map(workingTitle);
    expect(whole(await at(strange, '46 ±', { checked: true }))).toEqual(whole(await at(strange, '46 ±')));
  });
});

const ROOT = 'sample-procedures';
const SAMPLES = readdirSync(ROOT, { recursive: true, encoding: 'utf8' })
  .filter((path) => /\.(?:family|procedure|stores)\.yaml$/.test(path) && !path.startsWith('faulty'))
  .sort();

test.each(SAMPLES)('every working of %s fits a screen, and can be told', async (path) => {
  const workspace = new Workspace([uriOfPath(join(process.cwd(), ROOT))]);
  const uri = uriOfPath(join(process.cwd(), ROOT, path));
  await workspace.loadLinked(uri, new NodeFiles());
  const { snapshot } = workspace;
  const document = snapshot.document(uri);
  if (document === undefined) throw new Error(`No ${path}`);
  const { findings }: CheckResult = checkDocument(snapshot, document, { today: TODAY });
  const span = { start: 0, end: document.text.length };
  const all = workingsAt({ snapshot, document, span, findings })?.workings ?? [];
  expect(all.length).toBeGreaterThan(5);
  for (const working of all) {
    const lines = workingText(working).split('\n');
    expect(lines.length, working.title).toBeLessThanOrEqual(50);
    expect(lines.filter((line) => [...line].length > 110)).toEqual([]);
    expect(lines.join('\n')).not.toMatch(/undefined|NaN|Infinity|\[object/);
    expect(workingMarkdown(working)).not.toMatch(/undefined|NaN|Infinity|\[object/);
  }
});
