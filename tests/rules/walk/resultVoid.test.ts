import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'result-void';
const VOID = 'limits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, void-by: [cap-nut, wheel] }';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const MEASURE = '- measure: end-play\n  with: dial-gauge';
const TURN = '- loosen: cap-nut\n- tighten: cap-nut';
const undone = (line: number, part: string, builds = ''): string =>
  `${line} end-play: The end play is measured here and then made void: the ${part} is touched after it; measure it again afterwards${builds}`;

test('it stands at the last measurement and points to the last touch', async () => {
  expect(await shown(work(`${OPEN}\n${MEASURE}\n${MEASURE}\n${TURN}`, VOID), RULE)).toEqual([
    undone(4, 'cap nut'),
    '-> 7 cap-nut: The cap nut is tightened here',
  ]);
  expect(await shown(work(`${OPEN}\n${TURN}\n${MEASURE}`, VOID), RULE)).toEqual([]);
});

test('of several causes, the one that comes last is named', async () => {
  const steps = `${OPEN}\n${MEASURE}\n- remove: cap-nut\n- remove: wheel`;
  expect(await shown(work(steps, VOID), RULE)).toEqual([undone(2, 'wheel'), '-> 5 wheel: The wheel is taken off here']);
});

test('what takes the place of the cause is one', async () => {
  const family = `${VOID}\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, unless: big-wheel }\n  flange-nut: { name: flange nut, kind: nut, sits-on: core, when: big-wheel, instead-of: cap-nut }`;
  const head = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
  expect((await shown(workUnder(head, `${MEASURE}\n- loosen: flange-nut`, family), RULE))[0]).toBe(
    undone(1, 'flange nut', ' (K1-A with the big wheel)'),
  );
});

test('a part that is no cause, a record only, and work that ends with parts', async () => {
  expect(await shown(work(`${MEASURE}\n${OPEN}`, VOID), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n${MEASURE}\n  accept: record-only\n${TURN}`, VOID), RULE)).toEqual([]);
  expect(await shown(workUnder('ends: parts', `${OPEN}\n${MEASURE}\n${TURN}`, VOID), RULE)).toEqual([]);
});

test('on the way on which it is not right, nothing is touched but the value stands', async () => {
  const steps = `${MEASURE}\n  if-not:\n    do:\n      - say: Tap the shaft.`;
  expect(await shown(work(steps), RULE)).toEqual([
    '1 end-play: The end play is measured here and is not right; measure it again afterwards (when the end play is not right)',
  ]);
  expect(await shown(work(`${steps}\n${MEASURE}`), RULE)).toEqual([]);
});

test('the builds on which it is touched', async () => {
  const steps = `${OPEN}\n${MEASURE}\n- loosen: cap-nut\n  when: k1-b`;
  expect(await shown(work(steps, VOID), RULE)).toEqual([
    undone(2, 'cap nut', ' (K1-B)'),
    '-> 4 cap-nut: The cap nut is loosened here',
  ]);
});

test('while something is half typed, it may be the measurement', async () => {
  expect(await shown(work(`${OPEN}\n${MEASURE}\n${TURN}\n- measure:`, VOID), RULE)).toEqual([]);
});
