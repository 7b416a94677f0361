import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const HELD =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, hold: shaft hexagon }';

test('loosening and tightening both need the hold, and own words may say it', async () => {
  const found = (steps: string): Promise<string[]> => reported(withFamily(inStep(steps), HELD), 'counter-hold-missing');
  const message = 'cap-nut: The cap nut must be counter-held (shaft hexagon); say with "hold" where and with what';
  expect(await found('- loosen: cap-nut')).toEqual([message]);
  expect(await found('- tighten: cap-nut')).toEqual([message]);
  expect(await found('- tighten: cap-nut\n  hold: shaft hexagon')).toEqual([]);
  expect(await found('- loosen: cap-nut\n  say: Hold the shaft hexagon and loosen the nut.')).toEqual([]);
  expect(await found('- remove: cap-nut')).toEqual([]);
});
