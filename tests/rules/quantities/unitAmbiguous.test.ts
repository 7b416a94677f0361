import { expect, test } from 'vitest';
import { inFamily, inStep } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'unit-ambiguous';

test('pounds are underlined, and the unit that the family means comes first', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 41 ± 3 lb');
  expect(await reported(example, RULE)).toEqual(['lb: The unit lb says too little; write lbf·ft or lbf·in']);
  expect(await offered(example, RULE)).toEqual(['Write lbf·in', 'Write lbf·ft']);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('torque: 41 ± 3 lbf·in\n');
});

test('a unit that runs into its number gets a space', async () => {
  const mended = await fixed(inStep('- tighten: cap-nut\n  torque: 4kg'), RULE, 'Write kgf·cm');
  expect(mended.files[mended.at]).toContain('torque: 4 kgf·cm\n');
});

test('kilograms and pounds in a sentence about tightening are reported', async () => {
  const example = inStep('- Tighten the cap nut to 41 lb.');
  expect(await reported(example, RULE)).toEqual(['lb: The unit lb says too little; write lbf·ft or lbf·in']);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('to 41 lbf·in.\n');
});

test('a mass in kilograms is not ambiguous', async () => {
  expect(await reported(inStep('- Lift the core, which is 12 kg.'), RULE)).toEqual([]);
});

test('inches and thou of a dimension are asked for', async () => {
  expect(await reported(inFamily('dimensions:\n  bore: 5m'), RULE)).toHaveLength(1);
});
