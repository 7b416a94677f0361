import { expect, test } from 'vitest';
import { inFamily, inHead, inStep } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'tolerance-missing';

test('a single torque is reported, and the family knows its tolerance', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 41 lbf·in');
  expect(await reported(example, RULE)).toEqual([
    '41 lbf·in: The torque 41 lbf·in has no tolerance; write the one that the maker states',
  ]);
  const mended = await fixed(example, RULE, 'Write 4.6 ± 0.3 N·m, as the family states');
  expect(mended.files[mended.at]).toContain('torque: 4.6 ± 0.3 N·m\n');
  expect(await offered(inStep('- tighten: cap-nut\n  torque: 5 N·m'), RULE)).toEqual([]);
});

test('a tolerance, a range or a limit is enough', async () => {
  for (const torque of ['4.6 ± 0.3 N·m', '4.6 N·m ± 6 %', '4.3..4.9 N·m', '≤ 5 N·m', '2 ± 0.2 N·m + 90 ± 5°']) {
    expect(await reported(inStep(`- tighten: cap-nut\n  torque: ${torque}`), RULE)).toEqual([]);
  }
});

test('of passes only the last needs one; an angle needs its own', async () => {
  expect(await reported(inStep('- tighten: cap-nut\n  passes: [2 N·m, 4.6 ± 0.3 N·m]'), RULE)).toEqual([]);
  expect((await reported(inStep('- tighten: cap-nut\n  passes: [2 N·m, 4.6 N·m]'), RULE))[0]).toMatch(/^4\.6 N·m: /);
  expect(await reported(inStep('- tighten: cap-nut\n  torque: 2 ± 0.2 N·m\n  angle: 90°'), RULE)).toHaveLength(1);
});

test('torques by build, dimensions and limits of a family', async () => {
  const nut =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, torque: { k1-a: 5 N·m, k1-b: 5 ± 1 N·m } }';
  expect(await reported(inFamily(nut), RULE)).toHaveLength(1);
  expect(await reported(inFamily('dimensions:\n  bore: 8.03 mm'), RULE)).toEqual([
    '8.03 mm: The dimension 8.03 mm has no tolerance; write a range or a tolerance',
  ]);
  expect(await reported(inFamily('limits:\n  end-play: { name: end play, accept: 0.05 mm }'), RULE)).toEqual([
    '0.05 mm: The limit 0.05 mm is a single value; write a range, a tolerance, or ≤ or ≥ before it',
  ]);
});

test('limits of a procedure and of one instruction', async () => {
  expect(await reported(inStep('- measure: end-play\n  accept: 0.05 mm'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- measure: end-play\n  accept: record-only'), RULE)).toEqual([]);
  expect(
    await reported(inHead('readings:\n  gap: { name: gap, quantity: length, accept: 0.05 mm }'), RULE),
  ).toHaveLength(1);
});

test('sizes of tools and widths across flats need none', async () => {
  const nut =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, torque: 5 ± 1 N·m, across-flats: 8 mm }';
  expect(await reported(inFamily(nut), RULE)).toEqual([]);
});

test('of a torque and an angle, the one without a tolerance is told', async () => {
  const found = await reported(inStep('- tighten: cap-nut\n  torque: 2 ± 0.2 N·m + 60°'), 'tolerance-missing');
  expect(found).toEqual(['60°: The angle 60° has no tolerance; write the one that the maker states']);
});
