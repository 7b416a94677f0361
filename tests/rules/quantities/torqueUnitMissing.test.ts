import { expect, test } from 'vitest';
import { inStep } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'torque-unit-missing';

test('a bare number is reported at the number, and the fix writes the unit', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 45');
  expect(await reported(example, RULE)).toEqual(['45: The torque 45 has no unit; write the one that the maker states']);
  const mended = await fixed(example, RULE, 'Write lbf·in');
  expect(mended.files[mended.at]).toContain('torque: 45 lbf·in\n');
});

test('a bare torque in a sentence is reported where it stands', async () => {
  expect(await reported(inStep('- Tighten the cap nut to 45.'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- Tighten the cap nut to 45 lbf·in.'), RULE)).toEqual([]);
});
