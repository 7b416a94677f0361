import { describe, expect, test } from 'vitest';
import { type Example, inStep, withFamily, withFiles, withKit } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'kit-quantity-short';

function seals(quantity: string, step: string, lines: string): Example {
  const family = `parts:\n  cover-seal: { name: cover seal, kind: o-ring, quantity: ${quantity}, sits-on: core, renew: always }`;
  const kit = withKit(inStep(step), lines).files['kits/pellow-k1.kit.yaml'] ?? '';
  return withFiles(withFamily(inStep(step), family), { 'kits/pellow-k1.kit.yaml': kit });
}

const line = (quantity: number, when = ''): string =>
  `- { item: 10, part: cover-seal, number: PK-104, quantity: ${quantity}${when === '' ? '' : `, when: ${when}`} }`;
const short = (needed: number, held: number): string =>
  `cover-seal: The procedure fits ${needed} pieces of the cover seal, but the kit holds ${held}; raise the quantity of the line`;

describe('what the unit has is compared with what the kit holds', () => {
  test.each([
    ['too few for all builds', '3', line(2), [short(3, 2)]],
    ['enough', '3', line(3), []],
    ['enough in two lines', '3', `${line(2)}\n${line(1)}`, []],
    ['a second line for one variant', '3', `${line(2)}\n${line(1, 'k1-a')}`, [`${short(3, 2)} (K1-B)`]],
    ['a quantity by build', '{ k1-a: 2, otherwise: 4 }', line(2), [`${short(4, 2)} (K1-B)`]],
    ['the build that lacks most', '{ k1-a: 3, k1-b: 6 }', line(2), [`${short(6, 2)} (K1-B)`]],
    ['none at all is not a short quantity', '2', line(2, 'k1-a'), []],
  ])('%s', async (_, quantity, lines, wanted) => {
    expect(await reported(seals(quantity, '- install: cover-seal', lines), RULE)).toEqual(wanted);
  });
});

test('counts are added up, by build', async () => {
  const step = '- install: cover-seal\n  count: 2\n- remove: cover\n- install: cover-seal\n  count: 1\n  when: k1-a';
  expect(await reported(seals('4', step, line(2)), RULE)).toEqual([`${short(3, 2)} (K1-A)`]);
  expect(await reported(seals('4', step, line(3)), RULE)).toEqual([]);
});

test('a number that cannot be read says nothing', async () => {
  expect(await reported(seals('many', '- install: cover-seal', line(1)), RULE)).toEqual([]);
  expect(
    await reported(seals('3', '- install: cover-seal', '- { item: 10, part: cover-seal, number: PK-104 }'), RULE),
  ).toEqual([]);
});
