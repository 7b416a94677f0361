import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'out-of-reach';
const hidden = (place: string, part: string, builds = ''): string =>
  `${place}: The ${part} cannot be reached behind the cover; do this before the cover goes on, or take the cover off first${builds}`;

test('the part of a list that is covered is underlined', async () => {
  expect(await shown(work('- clean: [cover, wheel, core]'), RULE)).toEqual([hidden('1 wheel', 'wheel')]);
});

test('one cover is told once, and again after it went on again', async () => {
  const steps =
    '- inspect: wheel\n- loosen: cap-nut\n- remove: [cover-screw, cover, cover-seal]\n- tighten: cap-nut\n- install: cover\n- tighten: cap-nut';
  expect(await shown(work(steps), RULE)).toEqual([
    hidden('1 wheel', 'wheel'),
    hidden('6 cap-nut', 'cap nut'),
    '-> 5 cover: The cover is fitted here',
  ]);
});

test.each(['loosen: cap-nut', 'apply: oil\n  to: wheel', 'mark: core\n  across: wheel', 'inspect: wheel'])(
  '%s needs reach',
  async (instruction) => {
    expect(await shown(work(`- ${instruction}`), RULE)).toHaveLength(1);
    expect(await shown(work(`- remove: [cover-screw, cover]\n- ${instruction}`), RULE)).toEqual([]);
  },
);

test('a place on the part that is named may be in reach', async () => {
  expect(await shown(work('- apply: oil\n  to: wheel\n  at: shaft end'), RULE)).toEqual([]);
  expect(await shown(work('- clean: wheel\n  at: inlet edge'), RULE)).toEqual([]);
});

test('what lies on the bench, and what rides on the cover, is in reach', async () => {
  const cap = 'parts:\n  inner-cap: { name: inner cap, sits-on: cover, behind: [cover] }';
  expect(await shown(work('- clean: inner-cap', cap), RULE)).toEqual([]);
  const bench = '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: cover\n- clean: wheel';
  expect(await shown(work(bench), RULE)).toEqual([]);
});

test('on the builds and the way on which the cover is on', async () => {
  const open = '- remove: [cover-screw, cover]\n  when: k1-a\n';
  expect(await shown(work(`${open}- inspect: wheel`), RULE)).toEqual([hidden('3 wheel', 'wheel', ' (K1-B)')]);
  const way =
    '- remove: [cover-screw, cover]\n- inspect: core\n  if-not:\n    do:\n      - install: cover\n- clean: wheel';
  expect(await shown(work(way), RULE)).toEqual([
    hidden('6 wheel', 'wheel', ' (when the core is not right)'),
    '-> 5 cover: The cover is fitted here',
  ]);
});

test('a removal that is half typed may have been that of the cover', async () => {
  expect(await shown(work('- remove: cover-screw\n- remove:\n- clean: wheel'), RULE)).toEqual([]);
});
