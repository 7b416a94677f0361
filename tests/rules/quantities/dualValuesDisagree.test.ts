import { expect, test } from 'vitest';
import { inFamily, inStep } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'dual-values-disagree';

test('what stands in brackets is underlined, and either value can be made the other one', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m (51 ± 3 lbf·in)');
  expect(await reported(example, RULE)).toEqual([
    '51 ± 3 lbf·in: The 51 ± 3 lbf·in in brackets is not 4.6 ± 0.3 N·m, which is 41 ± 3 lbf·in; correct whichever is wrong',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('torque: 4.6 ± 0.3 N·m (41 ± 3 lbf·in)\n');
  const other = await fixed(example, RULE, 'Write 5.8 ± 0.3 N·m before the brackets');
  expect(other.files[other.at]).toContain('torque: 5.8 ± 0.3 N·m (51 ± 3 lbf·in)\n');
  expect(await reported(other, RULE)).toEqual([]);
});

test('a number that is right in another unit gets that unit', async () => {
  const example = inStep('- tighten: cap-nut\n  torque: 12 N·m (106 lbf·ft)');
  expect((await reported(example, RULE))[0]).toContain('the number would be right in lbf·in');
  expect(await offered(example, RULE)).toContain('Write lbf·in in brackets');
  const mended = await fixed(example, RULE, 'Write lbf·in in brackets');
  expect(mended.files[mended.at]).toContain('(106 lbf·in)');
});

test('a value rounded as its place says is no finding', async () => {
  for (const torque of ['4.6 N·m (41 lbf·in)', '4.6 ± 0.3 N·m (3.4 ± 0.2 lbf·ft)', '4.6 N·m']) {
    expect(await reported(inStep(`- tighten: cap-nut\n  torque: ${torque}`), RULE)).toEqual([]);
  }
});

test('values in sentences, in passes and by build are compared', async () => {
  expect(await reported(inStep('- Tighten the cap nut to 4.6 N·m (51 lbf·in).'), RULE)).toHaveLength(1);
  expect(await reported(inStep('- tighten: cap-nut\n  passes: [2 N·m (28 lbf·in), 4.6 N·m]'), RULE)).toHaveLength(1);
  const dimensions =
    'dimensions:\n  bore: { k1-a: 8.02..8.03 mm (0.3157..0.3161 in), k1-b: 8.02..8.03 mm (0.3257..0.3261 in) }';
  expect(await reported(inFamily(dimensions), RULE)).toHaveLength(1);
});
