import { expect, test } from 'vitest';
import { shown, work, workOfSteps } from './shown';

const RULE = 'decided-too-late';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const DECIDE = '- inspect: wheel\n  if-not: { replace: wheel }';
const HAND = 'identify:\n  nut-hand: { name: hand of the nut, values: [left, right] }';
const GAP = 'readings:\n  gap: { name: width of the gap, quantity: length }';
const SIZED =
  'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], sizes: 0.4..0.6 mm }';
const undecided = (place: string, builds = ''): string =>
  `${place}: Whether the wheel is used again or renewed is not decided by now; inspect or measure it first, and say with "if-not" when it is renewed${builds}`;
const BOTH = '- say: Balance the rotor.\n  when: wheel=renewed\n- say: Look at the marks.\n  when: wheel=re-used';

test('the condition is underlined, the first of two that ask the same', async () => {
  expect(await shown(work(`${OPEN}\n${BOTH}\n${DECIDE}`), RULE)).toEqual([undecided('3 wheel=renewed')]);
  expect(await shown(work(`${OPEN}\n${DECIDE}\n${BOTH}`), RULE)).toEqual([]);
});

test('one that stands in a list, or is told of a step, is found there', async () => {
  const list = '- say: Look.\n  when: { any: [k1-b, wheel=renewed] }';
  expect(await shown(work(`${list}\n${OPEN}\n${DECIDE}`), RULE)).toEqual([undecided('2 wheel=renewed', ' (K1-A)')]);
  const steps =
    '- step: balance\n  title: Balance\n  unless: wheel=re-used\n  do:\n    - say: Balance the rotor.\n- step: look\n  title: Look\n  do:\n    - inspect: wheel\n      if-not: { replace: wheel }';
  expect(await shown(workOfSteps(steps), RULE)).toEqual([undecided('-1 wheel=re-used')]);
});

test('an inspection without a consequence decides nothing', async () => {
  const steps = `${OPEN}\n- inspect: wheel\n- say: Balance.\n  when: wheel=renewed\n${DECIDE}`;
  expect(await shown(work(steps), RULE)).toEqual([undecided('4 wheel=renewed')]);
  const limit = `${OPEN}\n- measure: end-play\n  with: dial-gauge\n  if-not: { replace: wheel }\n${BOTH}`;
  expect(await shown(work(limit), RULE)).toEqual([]);
});

test('what the bench finds out, on the build on which it was not', async () => {
  const use = '- say: Turn clockwise.\n  when: nut-hand=left';
  expect(await shown(work(`- identify: nut-hand\n  when: k1-a\n${use}`, HAND), RULE)).toEqual([
    '4 nut-hand=left: The hand of the nut is not known by now; identify it first (K1-B)',
  ]);
  expect(await shown(work(`- identify: nut-hand\n${use}`, HAND), RULE)).toEqual([]);
});

test('a sum, a size and a torque need their reading, which is named in words', async () => {
  const measured = (place: string): string =>
    `${place}: The width of the gap has not been taken by now; measure it first`;
  expect(await shown(work('- calculate: end-play\n  from: [+gap]', GAP), RULE)).toEqual([measured('1 end-play')]);
  const tighten = `${OPEN}\n- tighten: cap-nut\n  plus: gap`;
  expect(await shown(work(tighten, GAP), RULE)).toEqual([measured('2 cap-nut')]);
  const taken = '- measure: gap\n  accept: record-only';
  expect(await shown(work(`${taken}\n- calculate: end-play\n  from: [+gap]`, GAP), RULE)).toEqual([]);
});

test('a size is chosen before a new part is fitted; an old one has its own', async () => {
  const fit = '- remove: [cap-nut, wheel]\n- discard: wheel';
  expect(await shown(work(`${OPEN}\n${fit}\n- install: wheel`, SIZED), RULE)).toEqual([
    '4 wheel: The size of the wheel has not been chosen by now; choose it before it is fitted',
  ]);
  const chosen = `${OPEN}\n${fit}\n- choose: wheel\n  size: [0.5 mm]\n- install: wheel`;
  expect(await shown(work(chosen, SIZED), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- remove: [cap-nut, wheel]\n- install: wheel`, SIZED), RULE)).toEqual([]);
});

test('a decision that is half typed may have been that about the part', async () => {
  expect(await shown(work(`${OPEN}\n- inspect: wheel\n  if-not: { replace: whee }\n${BOTH}`), RULE)).toEqual([]);
});
