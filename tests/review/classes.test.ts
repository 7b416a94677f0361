import { describe, expect, test } from 'vitest';
import { comparing, edited, line, SAMPLES } from './versions';

const FAMILY = 'families/ostrel-v4.family.yaml';
const MAJOR = 'procedures/v4-major.procedure.yaml';
const H9 = 'procedures/h9-rebuild.procedure.yaml';
const KIT = [...SAMPLES.keys()].find((name) => /v4.*major.*\.kit\.yaml$/.test(name)) ?? '';

/** What was changed, and every line that is told of it. */
const CASES: readonly (readonly [what: string, texts: () => Record<string, string>, told: readonly string[]])[] = [
  [
    'a torque of the family that is ten times as much',
    () => edited(FAMILY, '5.1 ± 0.3 N·m', '51 ± 3 N·m'),
    ['hurt | changed | part compressor-nut | torque | 5.1 ± 0.3 N·m → 51 ± 3 N·m | ten times | '],
  ],
  [
    'a torque in another unit',
    () => edited(FAMILY, '5.1 ± 0.3 N·m', '45.1 ± 2.7 lbf·in'),
    [
      'says | changed | part compressor-nut | torque | 5.1 ± 0.3 N·m → 45.1 ± 2.7 lbf·in | the same value in another unit | ',
    ],
  ],
  [
    'a unit spelt in another way',
    () => edited(FAMILY, '5.1 ± 0.3 N·m', '5.1 ± 0.3 Nm'),
    ['looks | changed | part compressor-nut | torque | 5.1 ± 0.3 N·m → 5.1 ± 0.3 Nm | written in another way | '],
  ],
  [
    'the number stays and the unit does not',
    () => edited(FAMILY, '5.1 ± 0.3 N·m', '5.1 ± 0.3 lbf·ft'),
    [
      'hurt | changed | part compressor-nut | torque | 5.1 ± 0.3 N·m → 5.1 ± 0.3 lbf·ft | the number is the same and the unit is not | ',
    ],
  ],
  [
    'a limit made wider',
    () => edited(FAMILY, /0\.04\.\.0\.09 mm/, '0.04..0.12 mm'),
    [expect.stringMatching(/^hurt \| changed \| limit .* \| accept \| .* → 0\.04\.\.0\.12 mm \| wider \| $/) as never],
  ],
  [
    'a limit made narrower',
    () => edited(FAMILY, /0\.04\.\.0\.09 mm/, '0.05..0.08 mm'),
    [expect.stringMatching(/^fits \| changed \| limit .* \| accept \| .* \| narrower \| $/) as never],
  ],
  [
    'a part renewed on condition only',
    () => edited(FAMILY, 'renew: always', 'renew: on-condition'),
    [expect.stringMatching(/^hurt \| changed \| part \S+ \| renew \| always → on-condition \| {2}\| $/) as never],
  ],
  [
    'a kit line with another quantity',
    () => edited(KIT, /quantity: 4/, 'quantity: 3'),
    [expect.stringMatching(/^fits \| changed \| kit line \d+ \| quantity \| 4 → 3 \| {2}\| $/) as never],
  ],
  [
    'a remark',
    () => edited(MAJOR, /^phases:/m, '# Checked in autumn.\nphases:'),
    ['looks | changed | procedure OP-410 |  | witnessmark → witnessmark | layout or remarks | '],
  ],
  [
    'another title',
    () => edited(H9, /title: Take /, 'title: Lift '),
    [expect.stringMatching(/^says \| changed \| step \S+ \| title \| /) as never],
  ],
];

describe('a change is told once, at its place, in the class of what it can hurt', () => {
  test.each(CASES)('%s', async (_, texts, told) => {
    const { changes } = await comparing(texts());
    expect(changes.map(line)).toEqual(told);
  });
});

test('a torque of the family reaches each procedure that prints it, at the step that tightens', async () => {
  const { changes } = await comparing(edited(FAMILY, '5.1 ± 0.3 N·m', '51 ± 3 N·m'));
  const reached = changes.flatMap((change) => change.reached);
  expect(reached.map(({ document }) => document)).toEqual(['OP-410', 'OP-415']);
  expect(reached[0]?.builds).toEqual([
    'v4-20',
    'v4-28r',
    'v4-20,cover-44',
    'v4-28r,cover-44',
    'v4-28r,wheel-44,cover-44',
  ]);
});

const stepsOf = (text: string) => text.split(/(?=^ {6}- step: )/m);

/** The sample with some of its steps taken out, put in or in another order. */
function withSteps(change: (steps: string[]) => string[]): Record<string, string> {
  return { [MAJOR]: change(stepsOf(SAMPLES.get(MAJOR) ?? '')).join('') };
}

test('a step that is gone could hurt', async () => {
  const { changes } = await comparing(
    withSteps((steps) => steps.filter((step) => !step.includes('step: remove-seal-plate\n'))),
  );
  expect(changes.filter((one) => one.kind === 'removed').map(({ class: one, of }) => [one, of.kind])).toContainEqual([
    'hurt',
    'step',
  ]);
});

test('two steps in the other order are one move, and the walk says whether it matters', async () => {
  const places = (steps: readonly string[], id: string) => steps.findIndex((step) => step.includes(`step: ${id}\n`));
  const swapped = (first: string, second: string) =>
    withSteps((steps) => {
      const [a, b] = [places(steps, first), places(steps, second)];
      const next = [...steps];
      [next[a], next[b]] = [steps[b] ?? '', steps[a] ?? ''];
      return next;
    });
  const matters = await comparing(swapped('remove-seal-plate', 'remove-wheel'));
  expect(matters.changes.map((one) => [one.class, one.kind, one.note])).toEqual([
    ['hurt', 'moved', 'the walk differs'],
  ]);
});

test('a renamed part is one change, and what names it is not changed by that', async () => {
  const texts = Object.fromEntries(
    [...SAMPLES].map(([name, text]) => [name, text.replaceAll(/\bcompressor-nut\b/g, 'wheel-nut')]),
  );
  const { changes } = await comparing(texts);
  expect(new Set(changes.map((one) => one.class))).toEqual(new Set(['looks']));
  expect(changes.filter((one) => one.kind === 'renamed').map(({ of }) => of.id)).toContain('wheel-nut');
});

test('a document under another name is one change', async () => {
  const { changes } = await comparing({
    [MAJOR]: undefined as never,
    'procedures/new-name.procedure.yaml': SAMPLES.get(MAJOR) ?? '',
  });
  expect(changes.map((one) => [one.class, one.kind, one.before?.text, one.after?.text])).toEqual([
    ['looks', 'renamed', MAJOR, 'procedures/new-name.procedure.yaml'],
  ]);
});

test('a caution that is taken out could hurt; one that is put in could not', async () => {
  const [caution] = /^ +caution: .*\n/m.exec(SAMPLES.get(H9) ?? '') ?? [''];
  const without = edited(H9, caution, '');
  const { changes } = await comparing(without);
  expect(changes.map((one) => [one.class, one.kind, one.key])).toEqual([['hurt', 'removed', 'caution']]);
});

test('a document that cannot be read any more is told, and nothing is thrown', async () => {
  const { changes } = await comparing({ [MAJOR]: '- no map\n' });
  expect(changes.map((one) => [one.class, one.note])).toEqual([['hurt', 'it cannot be read any more']]);
});
