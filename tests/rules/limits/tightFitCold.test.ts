import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'tight-fit-cold';
const hub = (steps: string, keys = '', nose = '20.020..20.030 mm') =>
  withFamily(
    inStep(`- remove: hub\n${steps}`),
    `parts:\n  shaft: { name: shaft, sits-on: core }\n  hub: { name: hub, sits-on: shaft, fit: { with: shaft, bore: hub-bore, shaft: nose }${keys} }\ndimensions:\n  hub-bore: 20.000..20.010 mm\n  nose: ${nose}`,
  );

test('a tight part that is fitted cold is told', async () => {
  expect(await reported(hub('- install: hub'), RULE)).toEqual([
    'hub: The hub is fitted cold, and has at least 0.01 mm of interference; heat it, cool what it goes onto, or press it',
  ]);
});

test('heat, cold, a press, or a fit that may be loose are right', async () => {
  expect(await reported(hub('- heat: hub\n  until: 120 °C\n- install: hub'), RULE)).toEqual([]);
  expect(await reported(hub('- cool: shaft\n  until: -60 °C\n- install: hub'), RULE)).toEqual([]);
  expect(await reported(hub('- press: hub'), RULE)).toEqual([]);
  expect(await reported(hub('- install: hub', '', '20.005..20.030 mm'), RULE)).toEqual([]);
});

test('a part that cooled down meanwhile is cold', async () => {
  expect(await reported(hub('- heat: hub\n  until: 120 °C\n- wait: 30 min\n- install: hub'), RULE)).toHaveLength(1);
});

test('a part that the family asks to be heated is told by another rule', async () => {
  const asked = hub('- install: hub', ', before-fitting: [heat]');
  expect(await reported(asked, RULE)).toEqual([]);
  expect(await reported(asked, 'not-heated')).toHaveLength(1);
});

test('only the tight build is named', async () => {
  const [message] = await reported(hub('- install: hub', '', '{ k1-a: 20.020..20.030 mm, k1-b: 19.99 mm }'), RULE);
  expect(message).toMatch(/\(K1-A\)$/);
});
