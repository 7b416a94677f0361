import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'fit-disagrees';
const mated = (keys: string, bore = '25.000..25.021 mm', shaft = '25.022..25.035 mm') =>
  inFamily(
    `parts:\n  hub: { name: hub, sits-on: core, fit: { with: core, bore: hub-bore, shaft: nose${keys} } }\ndimensions:\n  hub-bore: ${bore}\n  nose: ${shaft}`,
  );

test('an interference that the dimensions do not give is told', async () => {
  expect(await reported(mated(', interference: 0.010..0.035 mm'), RULE)).toEqual([
    '0.010..0.035 mm: The fit of the hub states 0.010..0.035 mm of interference, and its bore and shaft give 0.001 to 0.035 mm; mend the one that is wrong',
  ]);
  expect(await reported(mated(', interference: 0.001..0.035 mm'), RULE)).toEqual([]);
  expect(await reported(mated(', interference: 0.02 mm'), RULE)).toEqual([]);
  expect(await reported(mated(', interference: 0.08 mm'), RULE)).toHaveLength(1);
});

test('a class that the dimensions do not keep is told for hole and shaft', async () => {
  expect(await reported(mated(', class: 25 H7/p6'), RULE)).toEqual([]);
  expect(await reported(mated(', class: 25 H7/n6'), RULE)).toEqual([
    '25 H7/n6: The fit of the hub is 25 H7/n6, which allows a shaft of 25.015 to 25.028 mm, and the shaft is 25.022..25.035 mm; mend the class or the dimension',
  ]);
  expect(await reported(mated(', class: 25 H6/p6'), RULE)).toHaveLength(1);
  // A table that ends below the size concludes nothing.
  expect(await reported(mated(', class: 60 H7/p6'), RULE)).toEqual([]);
});

test('a class that cannot be read is told', async () => {
  expect(await reported(mated(', class: p6/H7'), RULE)).toEqual([
    'p6/H7: The class p6/H7 of the hub is no fit that can be read; write the size and both classes, as 25 H7/p6',
  ]);
});

test('a slip of a digit or a unit makes two sizes of one', async () => {
  expect(await reported(mated('', '25.000..25.021 mm', '2.5022..2.5035 mm'), RULE)).toEqual([
    '{ with: core, bore: hub-bore, shaft: nose }: The bore of 25.000..25.021 mm and the shaft of 2.5022..2.5035 mm of the hub are not of one size; name the right dimensions, or mend a slip of the digits or the unit',
  ]);
  expect(await reported(mated('', '0.9843..0.9850 in'), RULE)).toEqual([]);
});

test('only the builds concerned are named', async () => {
  const found = await reported(
    mated(', interference: 0.001..0.035 mm', '{ k1-a: 25.000..25.021 mm, k1-b: 25.05 mm }'),
    RULE,
  );
  expect(found).toHaveLength(1);
  expect(found[0]).toMatch(/\(K1-B\)$/);
});

test('the working shows both diameters', async () => {
  const { findings } = await checkExample(mated(', interference: 0.08 mm'));
  const [working] = findings.find((one) => one.rule === RULE)?.working() ?? [];
  expect(working?.rows).toContainEqual({ label: 'tightest', text: '0.035 mm interference' });
});

test('what is not stated concludes nothing', async () => {
  expect(await reported(mated(', interference:', '', ''), RULE)).toEqual([]);
  expect(await reported(mated(', interference: 5 N·m'), RULE)).toEqual([]);
  expect(await reported(inFamily('parts:\n  hub: { name: hub, fit: }'), RULE)).toEqual([]);
});
