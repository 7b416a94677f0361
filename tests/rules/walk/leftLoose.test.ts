import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'left-loose';
const OPEN = '- loosen: cover-screw\n';

test('passes that stop below the torque of the family name both values', async () => {
  const example = inStep(`${OPEN}- tighten: cover-screw\n  passes: [3 N·m, 5 ± 0.5 N·m]`);
  expect(await reported(example, RULE)).toEqual([
    'cover-screw: The last pass for the cover screw is 5 ± 0.5 N·m, below the 9 ± 1 N·m that the family states; add the final pass',
  ]);
});

test('what is loosened and not tightened again is plainly loose', async () => {
  expect(await reported(inStep(OPEN.trimEnd()), RULE)).toEqual([
    'cover-screw: The cover screw is still loose when the work is over; tighten or seat it',
  ]);
});

test('passes that reach the torque, or are followed by the rest, leave nothing loose', async () => {
  const whole = `${OPEN}- tighten: cover-screw\n  passes: [6.3 ± 0.6 N·m, 9 ± 1 N·m]`;
  expect(await reported(inStep(whole), RULE)).toEqual([]);
  const inTwo = `${OPEN}- tighten: cover-screw\n  passes: [3 N·m, 6.3 ± 0.6 N·m]\n- tighten: cover-screw\n  torque: 9 ± 1 N·m`;
  expect(await reported(inStep(inTwo), RULE)).toEqual([]);
});

test('only the builds whose torque is higher are named, with their value', async () => {
  const family =
    'parts:\n  cover-screw: { name: cover screw, kind: screw, sits-on: core, thread: M6×1, hand: right, torque: { k1-a: 6 ± 0.6 N·m, k1-b: 9 ± 1 N·m } }';
  const example = withFamily(inStep(`${OPEN}- tighten: cover-screw\n  passes: [3 N·m, 6 ± 0.6 N·m]`), family);
  expect(await reported(example, RULE)).toEqual([
    'cover-screw: The last pass for the cover screw is 6 ± 0.6 N·m, below the 9 ± 1 N·m that the family states; add the final pass (K1-B)',
  ]);
});

test('a number that is right in another unit is told once, where it is written', async () => {
  const example = inStep(`${OPEN}- tighten: cover-screw\n  passes: [3 N·m, 6.6 ± 0.7 N·m]`);
  expect(await reported(example, RULE)).toEqual([]);
  expect(await reported(example, 'torque-contradicts-family')).toHaveLength(1);
});
