import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'fitted-while-blocked';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const blocked = (place: string, part: string, other: string, builds = ''): string =>
  `${place}: The ${part} is fitted when the ${other} is already in its way; fit the ${part} before the ${other}${builds}`;

test('a part that comes behind its fastener in one list', async () => {
  expect(await shown(work(`${OPEN}\n- install: [cap-nut, wheel]`), RULE)).toEqual([
    blocked('2 wheel', 'wheel', 'cap nut'),
  ]);
  expect(await shown(work(`${OPEN}\n- install: [wheel, cap-nut]`), RULE)).toEqual([]);
});

test('one cover that went on too early is told once, at the first part behind it', async () => {
  expect(await shown(work(`${OPEN}\n- install: cover\n- install: [cover-seal, wheel]`), RULE)).toEqual([
    blocked('3 cover-seal', 'cover seal', 'cover'),
    '-> 2 cover: The cover is fitted here',
  ]);
});

test('a clamp is in the way once it is tight', async () => {
  const clamp =
    'parts:\n  cover-screw: { name: cover screw, kind: clamp, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m }';
  const laid = `${OPEN}\n- install: [cover-seal, cover-screw]\n`;
  expect(await shown(work(`${laid}- install: cover`, clamp), RULE)).toEqual([]);
  expect((await shown(work(`${laid}- seat: cover-screw\n- install: cover`, clamp), RULE))[0]).toBe(
    blocked('4 cover', 'cover', 'cover screw'),
  );
});

test('what is made up on the bench goes in as one and is behind what the unit has already', async () => {
  const ring =
    'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut] }\n  ring: { name: ring, sits-on: wheel, behind: [cover] }';
  expect((await shown(work(`${OPEN}\n- install: cover\n- install: wheel`, ring), RULE))[0]).toBe(
    blocked('3 wheel', 'wheel', 'cover'),
  );
  expect(await shown(work(`${OPEN}\n- remove: ring\n- install: cover\n- install: ring`, ring), RULE)).toEqual([]);
});

test('the builds on which the cover is on already', async () => {
  const steps = `${OPEN}\n- install: [cover-seal, cover]\n  when: k1-b\n- install: [wheel, cap-nut]`;
  expect(await shown(work(steps), RULE)).toEqual([
    blocked('4 wheel', 'wheel', 'cover', ' (K1-B)'),
    '-> 2 cover: The cover is fitted here',
  ]);
});

test('a trial fit needs the way free as well', async () => {
  expect(await shown(work(`${OPEN}\n- install: cap-nut\n- install: wheel\n  trial: true`), RULE)).toHaveLength(2);
});

test('a removal that is half typed may have cleared the way', async () => {
  expect(await shown(work(`${OPEN}\n- install: cap-nut\n- remove: cap-n\n- install: wheel`), RULE)).toEqual([]);
});
