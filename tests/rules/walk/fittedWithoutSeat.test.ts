import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'fitted-without-seat';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]\n- remove: ring';
const RING = 'parts:\n  ring: { name: ring, sits-on: wheel }';
const LEFT = '-> 3 wheel: The wheel leaves here';

test('a part that is fitted to what is away, or is away itself', async () => {
  const sent = `${OPEN}\n- send: wheel\n  to: Plating shop`;
  expect(await shown(work(`${sent}\n- install: ring`, RING), RULE)).toEqual([
    '5 ring: The ring is fitted to the wheel, which was sent out; take the wheel in again before this',
    LEFT,
  ]);
  expect(await shown(work(`${sent}\n- install: wheel`, RING), RULE)).toEqual([
    '5 wheel: The wheel is fitted here, but it was sent out and has not come back; take it in again before this',
    LEFT,
  ]);
  expect(await shown(work(`${sent}\n- receive: wheel\n- install: [ring, wheel]`, RING), RULE)).toEqual([]);
});

test('what was given back does not come back', async () => {
  const given = `${OPEN}\n- return: wheel`;
  expect(await shown(work(`${given}\n- install: wheel`, RING), RULE)).toEqual([
    '4 wheel: The wheel is fitted here, but it was given back; leave one of the two out',
    LEFT,
  ]);
  expect(await shown(work(`${given}\n- install: ring`, RING), RULE)).toEqual([
    '4 ring: The ring is fitted to the wheel, which was given back; leave one of the two out',
    LEFT,
  ]);
});

test('the builds on which it was not received', async () => {
  const steps = `${OPEN}\n- send: wheel\n- receive: wheel\n  when: k1-b\n- install: ring`;
  expect(await shown(work(steps, RING), RULE)).toEqual([
    '6 ring: The ring is fitted to the wheel, which was sent out; take the wheel in again before this (K1-A)',
    LEFT,
  ]);
});

test('work goes on at the bench: a carrier that is only off is no hindrance', async () => {
  expect(await shown(work(`${OPEN}\n- install: ring`, RING), RULE)).toEqual([]);
});

test('a receipt that is half typed may have fetched it', async () => {
  expect(await shown(work(`${OPEN}\n- send: wheel\n- receive: whee\n- install: wheel`, RING), RULE)).toEqual([]);
});
