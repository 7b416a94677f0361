import { expect, test } from 'vitest';
import { asStep, inFamily, inHead, inStep } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-unit-missing';

test('a bare number is reported at the number, and the fix writes the unit', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 45');
  expect(await reported(example, RULE)).toEqual(['45: The torque 45 has no unit; write the one that the maker states']);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('torque: 45 lbf·in\n');
});

test('the unit stands behind the tolerance', async () => {
  const mended = await fixed(inStep('- tighten: cap-nut\n  torque: "4.6 ± 0.3"'), RULE, 'Write N·m');
  expect(mended.files[mended.at]).toContain('torque: "4.6 ± 0.3 N·m"\n');
});

test('the unit in which the number is what the family states is offered first', async () => {
  expect((await offered(inStep('- tighten: cap-nut\n  torque: 41'), RULE))[0]).toBe('Write lbf·in');
  expect((await offered(inStep('- tighten: cap-nut\n  torque: 4.6'), RULE))[0]).toBe('Write N·m');
  expect((await offered(inStep('- Tighten the cap nut to 41.'), RULE))[0]).toBe('Write N·m');
});

test('passes, values by build, a second value in brackets and the family are looked at too', async () => {
  expect(await reported(inStep('- tighten: cap-nut\n  passes: [2, 4.6 N·m]'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- tighten: cap-nut\n  torque: { k1-a: 4.6, k1-b: 4.6 N·m }'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- tighten: cap-nut\n  torque: 4.6 N·m (41)'), RULE)).toHaveLength(1);
  const part =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, hand: right, torque: { k1-a: 4.6, otherwise: 5 N·m } }';
  expect(await reported(inFamily(part), RULE)).toHaveLength(1);
});

test('a bare torque in a sentence is reported where it stands, and mended there', async () => {
  const example = inStep('- Tighten the cap nut to 45.');
  expect(await reported(example, RULE)).toEqual([
    '45: The torque "45" has no unit; write the one that the maker states',
  ]);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('- Tighten the cap nut to 45 lbf·in.\n');
  expect(await reported(inStep('- Tighten the cap nut to 45 lbf·in.'), RULE)).toEqual([]);
});

test('a title, a warning and what is said before the start are sentences as well', async () => {
  expect(await reported(asStep('title: Tighten the nut to 45\ndo:\n  - install: cover'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- install: cover\n  warning: Torque the nut to 45 first.'), RULE)).toHaveLength(1);
  expect(await reported(inHead('before-you-start:\n  - notice: Tighten all screws to 9.'), RULE)).toHaveLength(1);
});

test('counts, steps and angles are no torques', async () => {
  for (const sentence of ['Tighten bolts 1 to 8.', 'Tighten the nut in step 45.', 'Tighten it by a further 90°.']) {
    expect(await reported(inStep(`- ${sentence}`), RULE)).toEqual([]);
  }
});

test('what a decimal comma between brackets has cut is told by the comma alone', async () => {
  expect(await reported(inStep('- { tighten: cap-nut, torque: 4,6 N·m }'), RULE)).toEqual([]);
});

test('of a value and its double, the one without a unit is named, and a # that cut the value is told alone', async () => {
  expect(await reported(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m (41)'), 'torque-unit-missing')).toEqual([
    '41: The torque 41 has no unit; write the one that the maker states',
  ]);
  expect(await reported(inStep('- tighten: cap-nut\n  torque: 41 #'), 'torque-unit-missing')).toEqual([]);
});
