import { expect, test } from 'vitest';
import { inFamily, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'unbalance-above-grade';
/** G 6.3 for 250 g at 120 000 min⁻¹: 0.1253 g·mm. */
const HEAD = 'max-speed: 120000 rpm\nparts:\n  rotor: { name: shaft, sits-on: core }\n';
const group = (rest: string) =>
  `${HEAD}balance-groups:\n  rotor: { name: rotor, members: [rotor, wheel], grade: G 6.3, mass: 250 g${rest} }`;

test('what the family permits is held against its grade, mass and speed', async () => {
  expect(await reported(inFamily(group(', permissible: 0.25 g·mm')), RULE)).toEqual([
    '0.25 g·mm: The rotor may keep 0.25 g·mm, and G 6.3 allows 0.125 g·mm (0.00493 g·in) at the highest speed; mend the value, the grade, the mass or the speed',
  ]);
  expect(await reported(inFamily(group(', permissible: 0.125 g·mm')), RULE)).toEqual([]);
  expect(await reported(inFamily(group(', permissible: 0.13 g·mm')), RULE)).toEqual([]);
});

test('other units, and the eccentricity in µm, are understood', async () => {
  expect(await reported(inFamily(group(', permissible: 0.00034 oz·in')), RULE)).toHaveLength(1);
  expect(await reported(inFamily(group(', permissible: 130 mg·mm')), RULE)).toEqual([]);
  const accept = (text: string) => withFamily(inStep(`- balance: rotor\n  accept: ${text}`), group(''));
  expect(await reported(accept('≤ 0.5 µm'), RULE)).toEqual([]);
  expect(await reported(accept('≤ 0.8 µm'), RULE)).toHaveLength(1);
});

test('a value for each plane counts as often as there are planes', async () => {
  const each = (text: string) => group(`, planes: 2, permissible: ${text}, permissible-for: plane`);
  expect(await reported(inFamily(each('0.06 g·mm')), RULE)).toEqual([]);
  expect(await reported(inFamily(each('0.1 g·mm')), RULE)).toEqual([
    '0.1 g·mm: The rotor may keep 0.1 g·mm in each plane, and G 6.3 allows 0.125 g·mm (0.00493 g·in) at the highest speed, 0.0627 g·mm (0.00247 g·in) in each of 2 planes; mend the value, the grade, the mass or the speed',
  ]);
});

test('the step accepts no more than the family permits, or than the grade allows', async () => {
  const step = (accept: string, more = '') =>
    withFamily(inStep(`- balance: rotor\n  accept: ${accept}${more}`), group(', permissible: 0.11 g·mm'));
  expect(await reported(step('≤ 0.11 g·mm'), RULE)).toEqual([]);
  expect(await reported(step('≤ 0.12 g·mm'), RULE)).toEqual([
    '≤ 0.12 g·mm: The step accepts ≤ 0.12 g·mm for the rotor, and the family permits 0.11 g·mm; accept no more than that',
  ]);
  expect(await reported(step('≤ 0.11 g·mm', '\n  grade: G 2.5'), RULE)).toEqual([
    '≤ 0.11 g·mm: The step accepts ≤ 0.11 g·mm for the rotor, and G 2.5 allows 0.0497 g·mm (0.00196 g·in) at the highest speed; accept no more than that',
  ]);
});

test('the mistake of the family is told in the family alone', async () => {
  const step = inStep('- balance: rotor\n  accept: ≤ 0.25 g·mm');
  expect(await reported(withFamily(step, group(', permissible: 0.25 g·mm')), RULE)).toEqual([]);
});

test('the mass may be that of the parts, by build and with those that take their place', async () => {
  const parts = `max-speed: 120000 rpm
parts:
  rotor: { name: shaft, sits-on: core, mass: 150 g }
  wheel: { name: wheel, sits-on: core, mass: { k1-a: 100 g, k1-b: 50 g } }
  wide-wheel: { name: wide wheel, sits-on: core, when: big-wheel, instead-of: wheel, mass: 200 g }
balance-groups:
  rotor: { name: rotor, members: [rotor, wheel], grade: G 6.3, permissible: 0.11 g·mm }`;
  const { findings } = await checkExample(inFamily(parts));
  const found = findings.filter((one) => one.rule === RULE);
  expect(found.map(({ builds }) => builds)).toEqual(['K1-B']);
  expect(found[0]?.working()[0]?.rows).toContainEqual({ label: 'mass', text: '200 g, the sum of rotor, wheel' });
});

test('without mass, speed or a grade of the standard nothing is said', async () => {
  const permits = 'permissible: 9 g·mm';
  for (const one of [
    `balance-groups:\n  rotor: { name: rotor, members: [wheel], grade: G 6.3, mass: 250 g, ${permits} }`,
    `${HEAD}balance-groups:\n  rotor: { name: rotor, members: [wheel], grade: G 6.3, ${permits} }`,
    `${HEAD}balance-groups:\n  rotor: { name: rotor, members: [wheel], grade: G 7, mass: 250 g, ${permits} }`,
    `${HEAD}balance-groups:\n  rotor: { name: rotor, members: [wheel], mass: 250 g, ${permits} }`,
    group(', permissible:'),
    group(', permissible: 9 mg'),
  ]) {
    expect(await reported(inFamily(one), RULE)).toEqual([]);
  }
});
