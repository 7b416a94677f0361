import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'torque-missing';
const MISSING = 'No torque is stated for the cap nut, here or in the family; write the one that the maker states';

/** The cap nut with other keys in place of its torque. */
function nut(step: string, keys = '') {
  return withFamily(inStep(step), `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right${keys} }`);
}

test('the fastener is underlined where neither the step nor the family says how tight', async () => {
  expect(await reported(nut('- tighten: cap-nut'), RULE)).toEqual([`cap-nut: ${MISSING}`]);
});

test('a torque, passes or an angle, here or in the family, is enough', async () => {
  for (const step of ['torque: 4.6 N·m', 'passes: [2 N·m, 4.6 N·m]', 'angle: 90°']) {
    expect(await reported(nut(`- tighten: cap-nut\n  ${step}`), RULE)).toEqual([]);
  }
  expect(await reported(nut('- tighten: cap-nut', ', torque: 4.6 N·m'), RULE)).toEqual([]);
  expect(await reported(nut('- tighten: cap-nut', ', angle: 90°'), RULE)).toEqual([]);
});

test('the finding names the builds for which neither states one', async () => {
  const keys = ', torque: { k1-a: 4.6 N·m }';
  expect(await reported(nut('- tighten: cap-nut', keys), RULE)).toEqual([`cap-nut: ${MISSING} (K1-B)`]);
  expect(await reported(nut('- tighten: cap-nut\n  when: k1-a', keys), RULE)).toEqual([]);
  expect(await reported(nut('- tighten: cap-nut\n  torque: { k1-b: 4 N·m }', keys), RULE)).toEqual([]);
});

test('own words that say how tight are left alone', async () => {
  expect(await reported(nut('- tighten: cap-nut\n  say: Tighten the cap nut by hand.'), RULE)).toEqual([]);
  expect(await reported(nut('- tighten: cap-nut\n  say: Tighten it to 4.6 N·m.'), RULE)).toEqual([]);
  expect(await reported(nut('- tighten: cap-nut\n  say: Tighten the cap nut firmly.'), RULE)).toHaveLength(1);
});

test('a key of the family that cannot be read is told there alone', async () => {
  expect(await reported(nut('- tighten: cap-nut', ', torque: { k1-x: 4.6 N·m }'), RULE)).toEqual([]);
});
