import { expect, test } from 'vitest';
import { conceding, shown, work } from './shown';

const RULE = 'not-cleaned';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const ASKED =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, behind: [cover], before-fitting: [clean] }\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [clean] }';
const dirty = (line: number, part: string, id: string, builds = ''): string =>
  `${line} ${id}: The ${part} is fitted without having been cleaned since it came off; clean it before it is fitted${builds}`;
const removed = (part: string, id: string): string => `-> 1 ${id}: The ${part} is taken off here`;

test('each part of a list stands for itself, with the place where it came off', async () => {
  expect(await shown(work(`${OPEN}\n- install: [wheel, cap-nut]`, ASKED), RULE)).toEqual([
    dirty(2, 'wheel', 'wheel'),
    removed('wheel', 'wheel'),
    dirty(2, 'cap nut', 'cap-nut'),
    removed('cap nut', 'cap-nut'),
  ]);
  expect(await shown(work(`${OPEN}\n- clean: [cap-nut, wheel]\n- install: [wheel, cap-nut]`, ASKED), RULE)).toEqual([]);
});

test('a concession lets one of the two parts stand', async () => {
  expect(await conceding(work(`${OPEN}\n- install: [wheel, cap-nut]`, ASKED), RULE, 'wheel')).toEqual({
    stands: [`${RULE} wheel`],
    left: [dirty(2, 'cap nut', 'cap-nut').slice('2 cap-nut: '.length)],
  });
});

test('a new part, and one on trial, need no cleaning; the old one after the trial does', async () => {
  expect(await shown(work(`${OPEN}\n- discard: wheel\n- install: wheel`, ASKED), RULE)).toEqual([]);
  const trial = `${OPEN}\n- install: wheel\n  trial: true`;
  expect(await shown(work(trial, ASKED), RULE)).toEqual([]);
  expect((await shown(work(`${trial}\n- remove: wheel\n- install: wheel`, ASKED), RULE))[0]).toBe(
    dirty(5, 'wheel', 'wheel'),
  );
});

test('cleaned and then sent out, it comes back dirty', async () => {
  const steps = `${OPEN}\n- clean: wheel\n- send: wheel\n- receive: wheel\n- install: wheel`;
  expect((await shown(work(steps, ASKED), RULE))[0]).toBe(dirty(5, 'wheel', 'wheel'));
});

test('only the part that is used again was dirty', async () => {
  const family =
    'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: on-condition, before-fitting: [clean] }';
  const steps = `${OPEN}\n- inspect: wheel\n  if-not: { replace: wheel }\n- say: Balance the rotor.\n  when: wheel=renewed\n- install: wheel`;
  expect((await shown(work(steps, family), RULE))[0]).toBe(dirty(6, 'wheel', 'wheel', ' (when the wheel is re-used)'));
});

test('the cleaning of blast dirt is asked for though the family asks for none', async () => {
  expect(await shown(work(`${OPEN}\n- clean: cover\n  by: blast\n- install: cover`), RULE)).toEqual([
    '4 cover: The cover is fitted with the dirt of blasting on it; wash it after it is blasted and before it is fitted',
    '-> 2 cover: The cover is cleaned here',
  ]);
});

test('a cleaning that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- clean: whee\n- install: wheel`, ASKED), RULE)).toEqual([]);
});
