import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'carried-in-a-circle';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);

test('the circle is told once, in order, with each further place', async () => {
  const example = parts(
    'plate: { name: plate, sits-on: liner }',
    'liner: { name: liner, sits-on: sleeve }',
    'sleeve: { name: sleeve, sits-on: plate }',
    'sleeve-ring: { name: sleeve ring, sits-on: sleeve }',
  );
  expect(await reported(example, RULE)).toEqual([
    'liner: The plate sits on the liner, which sits on the sleeve, which sits on the plate; say what really carries one of them',
  ]);
  const { findings } = await checkExample(example);
  expect(findings.map((one) => one.rule)).toEqual([RULE]);
  expect(findings[0]?.about).toEqual(['liner', 'plate', 'sleeve']);
  expect(findings[0]?.related.map((one) => one.message)).toEqual([
    'The liner sits on the sleeve',
    'The sleeve sits on the plate',
  ]);
});

test('a circle that closes only on some builds is told for these', async () => {
  const example = parts(
    'plate: { name: plate, when: k1-a, sits-on: liner }',
    'liner: { name: liner, sits-on: [core, plate] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'liner: The plate sits on the liner, which sits on the plate; say what really carries one of them (K1-A)',
  ]);
  const apart = parts(
    'plate: { name: plate, when: k1-a, sits-on: [core, liner] }',
    'liner: { name: liner, when: k1-b, sits-on: [core, plate] }',
  );
  expect(await reported(apart, RULE)).toEqual([]);
});

test('what takes the place of a carrier closes the circle as well', async () => {
  const example = parts(
    'ring: { name: ring, sits-on: liner }',
    'liner: { name: liner, sits-on: core }',
    'big-liner: { name: big liner, when: big-wheel, instead-of: liner, sits-on: ring }',
  );
  expect(await reported(example, RULE)).toEqual([
    'liner: The ring sits on the big liner (in place of the liner), which sits on the ring; say what really carries one of them (K1-A with the big wheel)',
  ]);
});

test('a nut that sits on the shaft that it fastens is no circle', async () => {
  const example = parts(
    'shaft: { name: shaft, sits-on: core, fastened-by: [shaft-nut] }',
    'shaft-nut: { name: shaft nut, kind: nut, sits-on: shaft, thread: M5×0.8, hand: left }',
  );
  expect((await checkExample(example)).findings).toEqual([]);
});

test('a base that sits on something is told as that, and not as a circle', async () => {
  const example = parts('core: { name: core, sits-on: cover }');
  expect(await reported(example, RULE)).toEqual([
    'cover: The core is the base, on which everything sits, so it cannot sit on the cover; take this out, or name another base',
  ]);
});
