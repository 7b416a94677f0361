import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'sent-while-fitted';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const still = (place: string, part: string, builds = ''): string =>
  `${place}: The ${part} is still in the unit here; take it off before it leaves${builds}`;

test.each(['send', 'return', 'discard'])('to %s it needs it off', async (verb) => {
  expect(await shown(work(`${OPEN}\n- ${verb}: [cover, cap-nut]`), RULE)).toEqual([still('2 cap-nut', 'cap nut')]);
  expect(await shown(work(`${OPEN}\n- remove: cap-nut\n- ${verb}: cap-nut`), RULE)).toEqual([]);
});

test('one that is sent and then thrown away is told once', async () => {
  expect(await shown(work(`- send: wheel\n- receive: wheel\n- discard: wheel`), RULE)).toEqual([
    still('1 wheel', 'wheel'),
  ]);
});

test('a part that went back before is pointed to', async () => {
  const steps = `${OPEN}\n- remove: cap-nut\n- install: cap-nut\n- return: cap-nut`;
  expect(await shown(work(steps), RULE)).toEqual([
    still('4 cap-nut', 'cap nut'),
    '-> 3 cap-nut: The cap nut is fitted here',
  ]);
});

test('a rider goes with what is off, and may leave with it', async () => {
  const ring = 'parts:\n  ring: { name: ring, sits-on: wheel }';
  expect(await shown(work(`${OPEN}\n- remove: [cap-nut, wheel]\n- send: [wheel, ring]`, ring), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- send: ring`, ring), RULE)).toEqual([still('2 ring', 'ring')]);
});

test('one piece that is left in keeps the others from leaving', async () => {
  const steps = '- remove: cover-screw\n  count: 1\n- discard: cover-screw';
  expect(await shown(work(steps), RULE)).toEqual([still('3 cover-screw', 'cover screw')]);
});

test('the builds and the way on which it is still in', async () => {
  const build = `${OPEN}\n- remove: cap-nut\n  when: k1-a\n- send: cap-nut`;
  expect(await shown(work(build), RULE)).toEqual([still('4 cap-nut', 'cap nut', ' (K1-B)')]);
  const way = `${OPEN}\n- check: free-turn\n  if-not:\n    do:\n      - remove: cap-nut\n- send: cap-nut`;
  expect(await shown(work(way), RULE)).toEqual([
    still('6 cap-nut', 'cap nut', ' (when "The wheel turns freely" holds)'),
  ]);
});

test('a removal that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- remove: cap\n- send: cap-nut`), RULE)).toEqual([]);
});
