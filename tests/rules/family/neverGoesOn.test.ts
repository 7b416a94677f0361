import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'never-goes-on';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);
const SHIELD = 'shield: { name: shield, sits-on: core, behind: [end-plate] }';
const LEVER = 'lever: { name: lever, sits-on: end-plate, behind: [shield] }';

test('what goes in with a part must not be behind what is in already', async () => {
  const example = parts(SHIELD, 'end-plate: { name: end plate, sits-on: core }', LEVER);
  expect(await reported(example, RULE)).toEqual([
    'end-plate: There is no order of fitting: the shield must be on before the end plate and the end plate with the lever on it before the shield; take out what is not so',
  ]);
  const { findings } = await checkExample(example);
  expect(findings).toHaveLength(1);
  expect(findings[0]?.related.map((one) => one.message)).toEqual([
    'The lever, which goes in with the end plate, is behind the shield',
  ]);
});

test('only the builds that have all of it are named', async () => {
  const example = parts(
    SHIELD,
    'end-plate: { name: end plate, when: k1-b, sits-on: core }',
    `${LEVER.slice(0, -2)}, when: k1-b }`,
  );
  expect(await reported(example, RULE)).toEqual([expect.stringMatching(/take out what is not so \(K1-B\)$/)]);
});

test('a part that sits on something else as well does not go in with it', async () => {
  const example = parts(
    SHIELD,
    'end-plate: { name: end plate, sits-on: core }',
    'lever: { name: lever, sits-on: [core, end-plate], behind: [shield] }',
  );
  expect(await reported(example, RULE)).toEqual([]);
});

test('nothing is said where the parts cannot come off either', async () => {
  const example = parts('end-plate: { name: end plate, sits-on: core, behind: [shield] }', SHIELD);
  expect(await reported(example, 'never-comes-off')).toHaveLength(1);
  expect(await reported(example, RULE)).toEqual([]);
});

test('the nut and the wheel on the end of a shaft go on behind the cover', async () => {
  const example = parts(
    'shaft: { name: shaft, sits-on: core, fastened-by: [shaft-nut], behind: [rotor-wheel] }',
    'rotor-wheel: { name: rotor wheel, sits-on: shaft, fastened-by: [shaft-nut], behind: [cover] }',
    'shaft-nut: { name: shaft nut, kind: nut, sits-on: shaft, thread: M5×0.8, hand: left, behind: [cover] }',
  );
  expect((await checkExample(example)).findings).toEqual([]);
});
