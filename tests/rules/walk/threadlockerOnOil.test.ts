import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'threadlocker-on-oil';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut]';
const OIL = '- apply: oil\n  to: cap-nut';
const LOCK = '- apply: threadlocker\n  to: cap-nut';
const onOil = (line: number, builds = ''): string =>
  `${line} cap-nut: Threadlocker goes on the oiled thread of the cap nut; clean the thread first, or keep the oil off it${builds}`;

test('the part is underlined, and where it was oiled is pointed to', async () => {
  const steps = `${OPEN}\n- apply: oil\n  to: [core, cap-nut]\n- apply: threadlocker\n  to: [cap-nut, cover-screw]`;
  expect(await shown(work(steps), RULE)).toEqual([onOil(5), '-> 3 cap-nut: The cap nut is treated here']);
});

test('oil on the thread counts, oil on the face does not', async () => {
  expect(await shown(work(`${OPEN}\n${OIL}\n  at: thread and face\n${LOCK}`), RULE)).toHaveLength(2);
  expect(await shown(work(`${OPEN}\n${OIL}\n  at: seating face\n${LOCK}`), RULE)).toEqual([]);
});

test('a part without a thread is oiled all over and locked nowhere', async () => {
  const steps = `${OPEN}\n- apply: oil\n  to: cover\n- apply: threadlocker\n  to: cover`;
  expect(await shown(work(steps), RULE)).toEqual([]);
});

test('cleaning between the two helps, before both does not', async () => {
  expect(await shown(work(`${OPEN}\n${OIL}\n- clean: cap-nut\n${LOCK}`), RULE)).toEqual([]);
  expect((await shown(work(`${OPEN}\n- clean: cap-nut\n${OIL}\n${LOCK}`), RULE))[0]).toBe(onOil(6));
});

test('threadlocker first and oil after it is not this fault', async () => {
  expect(await shown(work(`${OPEN}\n${LOCK}\n${OIL}\n  at: seating face`), RULE)).toEqual([]);
});

test('the builds on which it was oiled', async () => {
  expect((await shown(work(`${OPEN}\n${OIL}\n  when: k1-b\n${LOCK}`), RULE))[0]).toBe(onOil(6, ' (K1-B)'));
});

test('a cleaning that is half typed may have been that of the thread', async () => {
  expect(await shown(work(`${OPEN}\n${OIL}\n- clean: cap\n${LOCK}`), RULE)).toEqual([]);
});
