import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'left-in';
const BLANK = 'parts:\n  blank: { name: inlet blank, temporary: true, quantity: 2, sits-on: core }';
const blank = (line: number, builds = ''): string =>
  `${line} blank: The inlet blank is still in the unit when the work is over; take it out${builds}`;

test('a blank stands where it was fitted, and one of two is enough', async () => {
  expect(await shown(work('- install: blank', BLANK), RULE)).toEqual([blank(1)]);
  expect(await shown(work('- install: blank\n- remove: blank\n  count: 1', BLANK), RULE)).toEqual([blank(1)]);
  expect(await shown(work('- install: blank\n- remove: blank', BLANK), RULE)).toEqual([]);
});

test('the builds and the way on which it stays in', async () => {
  expect(await shown(work('- install: blank\n- remove: blank\n  unless: k1-b', BLANK), RULE)).toEqual([
    blank(1, ' (K1-B)'),
  ]);
  const way = '- inspect: core\n  if-not:\n    do:\n      - install: blank';
  expect(await shown(work(way, BLANK), RULE)).toEqual([blank(4, ' (when the core is not right)')]);
});

test('a trial fit counts until the part is off, or fitted for good', async () => {
  const trial = '- remove: [cover-screw, cover]\n- install: cover\n  trial: true';
  expect(await shown(work(trial), RULE)).toEqual([
    '2 cover: The cover is fitted on trial only and is still in place when the work is over; take it off, or fit it for good',
  ]);
  expect(await shown(work(`${trial}\n- remove: cover\n- install: cover`), RULE)).toEqual([]);
});

test('the part that another one takes the place of', async () => {
  const family =
    'parts:\n  wheel: { name: wheel, sits-on: core, unless: big-wheel }\n  wide-wheel: { name: wide wheel, sits-on: core, when: big-wheel, instead-of: wheel }';
  const head = 'adds: [big-wheel]';
  expect(await shown(workUnder(head, '- say: Look.', family), RULE)).toEqual([
    '-2 only-step: The wheel is still in the unit when the work is over, but does not belong to the finished unit; take it off (K1-A with the big wheel, received without the big wheel)',
  ]);
  const removed = '- remove: wheel\n- discard: wheel\n- install: wheel\n  unless: big-wheel\n- install: wide-wheel';
  expect(await shown(workUnder(head, removed, family), RULE)).toEqual([]);
});

test('a blank may stay in what is only a stage of the work, a trial fit may not', async () => {
  expect(await shown(workUnder('ends: parts', '- install: blank', BLANK), RULE)).toEqual([]);
  const trial = '- remove: [cover-screw, cover]\n- install: cover\n  trial: true';
  expect(await shown(workUnder('ends: parts', trial), RULE)).toHaveLength(1);
});

test('while something is half typed, nobody can say what stays in', async () => {
  expect(await shown(work('- install: blank\n- remove: blan', BLANK), RULE)).toEqual([]);
});
