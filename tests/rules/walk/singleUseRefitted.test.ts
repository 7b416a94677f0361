import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'single-use-refitted';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const nut = (more = ''): string =>
  `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], renew: always${more} }`;
const used = (line: number, builds = ''): string =>
  `${line} cap-nut: The cap nut is used up and is tightened again; take it off and fit a new one${builds}`;

test('the second tightening is underlined and points to where it was loosened', async () => {
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut\n- tighten: cap-nut`, nut()), RULE)).toEqual([
    used(3),
    '-> 2 cap-nut: The cap nut is loosened here',
  ]);
});

test('a new one may be tightened, and in two passes', async () => {
  const passes = '- tighten: cap-nut\n  torque: 2 N·m\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m';
  const steps = `${OPEN}\n- loosen: cap-nut\n- remove: cap-nut\n- install: cap-nut`;
  expect(await shown(work(`${steps}\n${passes}`, nut()), RULE)).toEqual([]);
});

test('what was only run up may be loosened and tightened again; what had its torque may not', async () => {
  const fresh = `${OPEN}\n- remove: cap-nut\n- install: cap-nut\n- tighten: cap-nut`;
  const again = '- loosen: cap-nut\n- tighten: cap-nut';
  expect(await shown(work(`${fresh}\n  torque: 2 N·m\n${again}`, nut()), RULE)).toEqual([]);
  expect((await shown(work(`${fresh}\n${again}`, nut()), RULE))[0]).toBe(used(6));
});

test('a nut that was used up and has lost its threadlocker is told once', async () => {
  const example = work(`${OPEN}\n- loosen: cap-nut\n- tighten: cap-nut`, nut(', before-fitting: [threadlock]'));
  expect(await shown(example, RULE)).toHaveLength(2);
  expect(await shown(example, 'not-threadlocked')).toEqual([]);
});

test('on the builds and the way on which it was loosened', async () => {
  const build = `${OPEN}\n- loosen: cap-nut\n  when: k1-b\n- tighten: cap-nut`;
  expect((await shown(work(build, nut()), RULE))[0]).toBe(used(4, ' (K1-B)'));
  const way = `${OPEN}\n- check: free-turn\n  if-not:\n    do:\n      - loosen: cap-nut\n- tighten: cap-nut`;
  expect((await shown(work(way, nut()), RULE))[0]).toBe(used(6, ' (when "The wheel turns freely" does not hold)'));
});

test('a nut that is not renewed always, and a fitting that is half typed, are let pass', async () => {
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut\n- tighten: cap-nut`), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut\n- install: cap\n- tighten: cap-nut`, nut()), RULE)).toEqual([]);
});
