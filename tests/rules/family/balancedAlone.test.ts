import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'balanced-alone';
const group = (rest: string, parts = '') =>
  inFamily(
    `parts:\n  shaft: { name: shaft, sits-on: core }\n${parts}balance-groups:\n  rotor: { name: rotor, ${rest} }`,
  );
const BIG = '  big-nose: { name: big nose, when: big-wheel, instead-of: wheel, sits-on: core }\n';

test('members that are never two in one unit', async () => {
  expect(await reported(group('members: [wheel, big-nose]', BIG), RULE)).toEqual([
    'rotor: No build has two parts of the rotor together, so that nothing is balanced together; name the parts that are',
  ]);
  expect(await reported(group('members: [shaft, shaft]'), RULE)).toHaveLength(1);
});

test('a single part may be balanced, but has no position to keep', async () => {
  expect(await reported(group('members: [shaft]'), RULE)).toEqual([]);
  expect(await reported(group('members: [shaft], keep-position: true'), RULE)).toEqual([
    'true: The rotor has one part alone, which has no position to keep to another; name its other parts, or take this out',
  ]);
});

test('two on some build are enough, and an unknown member tells nothing', async () => {
  expect(await reported(group('members: [shaft, big-nose], keep-position: true', BIG), RULE)).toEqual([]);
  expect(await reported(group('members: [wheel, sahft]'), RULE)).toEqual([]);
});
