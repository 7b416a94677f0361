import { expect, test } from 'vitest';
import { type Example, inFamily, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-implausible';
const PROOF = 'torque-above-proof';

/** A family with one fastener of the given keys. */
function fastener(keys: string, more = ''): Example {
  return inFamily(`parts:\n  lid-bolt: { name: lid bolt, kind: bolt, sits-on: core, hand: right, ${keys} }${more}`);
}

function nut(keys: string, shaft: string): Example {
  return inFamily(
    `parts:\n  spindle: { name: spindle, kind: shaft, sits-on: core, ${shaft} }\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, mates-with: spindle, hand: right, ${keys} }`,
  );
}

test('a number in the wrong unit is told with the right one, and the fix writes that', async () => {
  const example = fastener('thread: M6×1, property-class: 8.8, torque: 9 ± 1 lbf·in');
  expect(await reported(example, RULE)).toEqual([
    '9 ± 1 lbf·in: The torque 9 ± 1 lbf·in hardly tightens the M6×1 thread of the lid bolt; in N·m or lbf·ft it would be right',
  ]);
  expect(await offered(example, RULE)).toEqual(['Write N·m', 'Write lbf·ft']);
  const mended = await fixed(example, RULE, 'Write N·m');
  expect(mended.files[mended.at]).toContain('torque: 9 ± 1 N·m');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a value in brackets that repeats the slip is converted anew', async () => {
  const example = fastener('thread: M6×1, property-class: 8.8, torque: 9.0 ± 0.9 lbf·in (1.02 ± 0.1 N·m)');
  expect(await reported(example, 'dual-values-disagree')).toEqual([]);
  expect(await reported(example, RULE)).toHaveLength(1);
  const mended = await fixed(example, RULE, 'Write N·m');
  expect(mended.files[mended.at]).toContain('torque: 9.0 ± 0.9 N·m (80 ± 8 lbf·in)');
});

test('a torque a little above what tables give is told without a unit, with the limit in both units', async () => {
  const example = fastener('thread: M8×1.25, property-class: 8.8, torque: 34 ± 1 N·m');
  expect(await reported(example, RULE)).toEqual([
    '34 ± 1 N·m: The torque 34 ± 1 N·m is more than any table gives for the M8×1.25 thread of the lid bolt: about 30 N·m (22 lbf·ft) at most for class 8.8; correct the torque, the thread or the class',
  ]);
  expect(await offered(example, RULE)).toEqual([]);
});

test('the weakest part counts: a soft nut limits a hard shaft, and is named', async () => {
  const torque = 'thread: M8×1, torque: 17 ± 1 N·m';
  expect(await reported(nut(`${torque}, property-class: 10`, 'thread: M8×1, property-class: 10.9'), RULE)).toEqual([]);
  const soft = await reported(nut(`${torque}, property-class: 10`, 'thread: M8×1, property-class: 5.6'), RULE);
  expect(soft).toHaveLength(1);
  expect(soft[0]).toContain('at most for class 5.6 of the spindle');
});

test('on the builds on which it holds: a thread by variant, a class by variant', async () => {
  const example = fastener('thread: { k1-a: M8×1.25, k1-b: M6×1 }, property-class: 8.8, torque: 15 ± 1 N·m');
  const found = await reported(example, RULE);
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/^15 ± 1 N·m: .* M6×1 thread .*\(K1-B\)$/);
  const byVariant = 'torque: { k1-a: 20 ± 2 N·m, k1-b: 9 ± 1 lbf·in }';
  const two = await reported(fastener(`thread: M8×1.25, property-class: 8.8, ${byVariant}`), RULE);
  expect(two).toHaveLength(1);
  expect(two[0]).toMatch(/^9 ± 1 lbf·in: .*\(K1-B\)$/);
});

test('one cause, one finding: above proof it is an error of its own', async () => {
  const example = fastener('thread: M5×0.8, property-class: 8.8, torque: 45 ± 3 N·m');
  expect(await reported(example, RULE)).toEqual([]);
  expect(await reported(example, PROOF)).toHaveLength(1);
});

test.each([
  ['a light torque', 'thread: M8×1.25, property-class: 8.8, torque: 4 ± 0.4 N·m'],
  ['a light torque in pound inches', 'thread: M8×1.25, property-class: 8.8, torque: 45 ± 4 lbf·in'],
  ['no thread', 'property-class: 8.8, torque: 400 ± 4 N·m'],
  ['a thread that cannot be read', 'thread: M8x, property-class: 8.8, torque: 400 ± 4 N·m'],
  ['a pipe thread', 'thread: G1/4, property-class: 8.8, torque: 400 ± 4 N·m'],
  ['a thin nut, whose strength no table gives', 'thread: M8×1.25, property-class: 04, torque: 400 ± 4 N·m'],
  ['a torque without a unit', 'thread: M8×1.25, property-class: 8.8, torque: 400'],
  ['half a torque', 'thread: M8×1.25, property-class: 8.8, torque: 4 ±'],
  ['a value and a double that disagree', 'thread: M6×1, property-class: 8.8, torque: 9 lbf·in (80 N·m)'],
  ['an angle after a light torque', 'thread: M8×1, property-class: 10.9, torque: 35 ± 3 lbf·in, angle: 60 ± 5°'],
])('%s is not told', async (_, keys) => {
  expect(await reported(fastener(keys), RULE)).toEqual([]);
  expect(await reported(fastener(keys), PROOF)).toEqual([]);
});

test('a plug in a seal may be as light as it likes, but not a hundredth of what its thread takes', async () => {
  const plug = (torque: string): Example =>
    inFamily(`parts:\n  port-plug: { name: port plug, kind: plug, sits-on: core, thread: M10×1, torque: ${torque} }`);
  expect(await reported(plug('71 ± 7 lbf·in'), RULE)).toEqual([]);
  expect(await reported(plug('8 ± 0.8 lbf·in'), RULE)).toHaveLength(1);
});

test('stated friction and a stated face change what is told', async () => {
  const keys = 'thread: M8×1.25, property-class: 8.8, torque: 32 ± 1 N·m';
  expect(await reported(fastener(keys), RULE)).toHaveLength(1);
  expect(await reported(fastener(`${keys}, friction: 20 %`), RULE)).toEqual([]);
  expect(await reported(fastener(`${keys}, bearing-diameter: 19 mm`), RULE)).toEqual([]);
});

test('the finding carries the calculation, and shows where the thread is stated', async () => {
  const { findings } = await checkExample(fastener('thread: M8×1.25, property-class: 8.8, torque: 34 ± 1 N·m'));
  const finding = findings.find(({ rule }) => rule === RULE);
  const [working] = finding?.working() ?? [];
  expect(working?.title).toBe('Torque of the lid bolt');
  expect(working?.rows.map(({ label }) => label)).toContain('usual band');
  expect(working?.steps.at(-1)?.symbol).toBe('M_A');
  expect(working?.sources).toContain('ISO 898-1');
  expect(finding?.related[0]?.message).toBe('The thread is M8×1.25 here');
});

const BARE =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, thread: M5×0.8, property-class: 8 }';

test('in an instruction, where the family states no torque', async () => {
  const step = (torque: string): Example => withFamily(inStep(`- tighten: cap-nut\n  ${torque}`), BARE);
  expect(await reported(step('torque: 5 ± 0.5 N·m'), RULE)).toEqual([]);
  const found = await reported(step('torque: 5 ± 0.5 lbf·in'), RULE);
  expect(found).toEqual([
    '5 ± 0.5 lbf·in: The torque 5 ± 0.5 lbf·in hardly tightens the M5×0.8 thread of the cap nut; in N·m or lbf·ft it would be right',
  ]);
  const passes = await reported(step('passes: [2 N·m, 5 ± 0.5 lbf·in]'), RULE);
  expect(passes).toHaveLength(1);
  expect(await reported(step('passes: [2 lbf·in, 5 ± 0.5 N·m]'), RULE)).toEqual([]);
  expect(await reported(step('torque: { k1-a: 5 ± 0.5 N·m, k1-b: 5 ± 0.5 lbf·in }'), RULE)).toHaveLength(1);
});

test('in an instruction, what the family states as well is told in the family, and what differs as a contradiction', async () => {
  const stated = BARE.replace('property-class: 8', 'property-class: 8, torque: 5 ± 0.5 lbf·in');
  const same = withFamily(inStep('- tighten: cap-nut\n  torque: 5 ± 0.5 lbf·in'), stated);
  expect(await reported(same, RULE)).toEqual([]);
  const right = BARE.replace('property-class: 8', 'property-class: 8, torque: 5 ± 0.5 N·m');
  const other = withFamily(inStep('- tighten: cap-nut\n  torque: 45 ± 5 N·m'), right);
  expect(await reported(other, PROOF)).toEqual([]);
  expect(await reported(other, 'torque-contradicts-family')).toHaveLength(1);
});
