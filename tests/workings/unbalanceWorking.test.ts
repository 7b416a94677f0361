import { expect, test } from 'vitest';
import { unbalanceWorkingsOf } from '../../server/src/core/workings/unbalanceWorking';
import { familyWith, rowsOf } from './familyWith';

const ROTOR = 'max-speed: 120000 rpm\nparts:\n  rotor: { name: shaft, sits-on: core }\n';
const group = (rest: string) => `${ROTOR}balance-groups:\n  set: { name: rotor, members: [rotor, wheel]${rest} }`;

test('a group shows what its grade allows, for the rotor and for each plane, and the grade that is reached', async () => {
  const family = await familyWith(group(', grade: G 6.3, mass: 250 g, planes: 2, permissible: 0.05 g·mm'));
  const [working] = unbalanceWorkingsOf(family, 'set');
  expect(rowsOf(working)).toEqual([
    'grade: G 6.3 (as turbochargers, fans, pumps, aircraft gas turbines)',
    'mass: 250 g',
    'highest speed: 120 000 min⁻¹',
    'correction planes: 2',
    'allowed for the rotor: 0.125 g·mm (0.00493 g·in)',
    'allowed for each of 2 planes: 0.0627 g·mm (0.00247 g·in), where the planes bear alike',
    'stated for the rotor: 0.05 g·mm',
    'that is grade: G 2.51',
  ]);
  expect(working?.steps.at(-1)?.symbol).toBe('U');
});

test('what is missing is named, and nothing is filled in', async () => {
  const family = await familyWith(group(''));
  const [working] = unbalanceWorkingsOf(family, 'set');
  expect(working?.steps).toEqual([]);
  expect(working?.missing).toEqual([
    'the balance grade of the rotor',
    'the mass of the rotor, or of each of its parts',
    'the permissible unbalance that the maker states',
  ]);
  const strange = await familyWith(group(', grade: G 7, mass: 250 g, permissible: 1 g·mm'));
  expect(unbalanceWorkingsOf(strange, 'set')[0]?.missing).toEqual([
    'a grade of ISO 21940-11 for the rotor; G 7 is none',
  ]);
  expect(unbalanceWorkingsOf(family, 'no-such-group')).toEqual([]);
});
