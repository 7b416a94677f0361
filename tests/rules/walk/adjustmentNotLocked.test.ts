import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'adjustment-not-locked';
const ROD =
  'parts:\n  rod: { name: rod, sits-on: core, locked-by: [lock-nut] }\n  lock-nut: { name: lock nut, kind: nut, sits-on: core, thread: M6×1, hand: right, torque: 4 ± 0.4 N·m }';
const CLIPPED =
  'parts:\n  rod: { name: rod, sits-on: core, locked-by: [clip, pin] }\n  clip: { name: clip, sits-on: core }\n  pin: { name: pin, sits-on: core }';
const SET = '- adjust: rod\n  until: it just touches';
const open = (line: number, builds = '', lock = 'the lock nut'): string =>
  `${line} rod: The rod is set here and never locked; lock it with ${lock} afterwards${builds}`;

test('the last setting is underlined where it was locked before', async () => {
  expect(await shown(work(`${SET}\n- tighten: lock-nut\n${SET}`, ROD), RULE)).toEqual([open(4)]);
  expect(await shown(work(`- loosen: lock-nut\n${SET}\n- tighten: lock-nut`, ROD), RULE)).toEqual([]);
});

test('what has no torque locks by being fitted, and every lock is named', async () => {
  expect(await shown(work(`- remove: clip\n${SET}`, CLIPPED), RULE)).toEqual([open(2, '', 'the clip or the pin')]);
  expect(await shown(work(`- remove: clip\n${SET}\n- install: clip`, CLIPPED), RULE)).toEqual([]);
});

test('a nut with a torque is no lock before it is tight', async () => {
  const steps = `- remove: lock-nut\n${SET}\n- install: lock-nut`;
  expect(await shown(work(steps, ROD), RULE)).toEqual([open(2)]);
});

test('the builds and the way on which it is not locked', async () => {
  expect(await shown(work(`${SET}\n- tighten: lock-nut\n  when: k1-a`, ROD), RULE)).toEqual([open(1, ' (K1-B)')]);
  const way =
    '- measure: end-play\n  with: dial-gauge\n  if-not:\n    do:\n      - adjust: rod\n        until: it fits';
  expect(await shown(work(way, ROD), RULE)).toEqual([open(5, ' (when the end play is not right)')]);
});

test('a part that nothing locks may be set', async () => {
  expect(await shown(work('- adjust: cover\n  until: it just touches'), RULE)).toEqual([]);
});

test('while something is half typed, it may be the lock', async () => {
  expect(await shown(work(`${SET}\n- tighten: lock`, ROD), RULE)).toEqual([]);
});
