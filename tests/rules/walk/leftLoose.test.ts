import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';
import { shown, work, workUnder } from './shown';

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

test('of the pieces, those that did not get it leave the fastener loose', async () => {
  const one = `${OPEN}- tighten: cover-screw\n  count: 1`;
  expect((await shown(work(one), RULE))[0]).toMatch(/^2 cover-screw: The cover screw is still loose/);
  expect(await shown(work(`${one}\n- tighten: cover-screw\n  count: 1`), RULE)).toEqual([]);
});

test('a ring, on the way and the build on which it is not seated', async () => {
  const ring = 'parts:\n  cover-screw: { name: cover ring, kind: retaining-ring, sits-on: core }';
  const loose = (line: number, builds: string): string =>
    `${line} cover-screw: The cover ring is still loose when the work is over; tighten or seat it${builds}`;
  expect(await shown(work(`${OPEN}- seat: cover-screw\n  unless: k1-b`, ring), RULE)).toEqual([loose(1, ' (K1-B)')]);
  const way = '- check: free-turn\n  if-not:\n    do:\n      - loosen: cover-screw\n      - check: free-turn';
  expect(await shown(work(way, ring), RULE)).toEqual([loose(4, ' (when "The wheel turns freely" does not hold)')]);
});

test('work that ends with parts, and what is half typed, leave nothing loose', async () => {
  expect(await shown(workUnder('ends: parts', OPEN.trimEnd()), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}- tighten: cover`), RULE)).toHaveLength(1);
  expect(await shown(work(`${OPEN}- tighten: cov`), RULE)).toEqual([]);
});
