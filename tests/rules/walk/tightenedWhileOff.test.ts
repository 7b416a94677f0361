import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'tightened-while-off';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const bare = (place: string, builds = ''): string =>
  `${place}: The cover screw is tightened while the cover is not there; fit the cover first${builds}`;
const REMOVED = '-> 1 cover: The cover is taken off here';

test('a screw that is tightened over nothing points to where the part came off', async () => {
  const steps = `${OPEN}\n- install: [cover-seal, cover-screw]\n- tighten: [cap-nut, cover-screw]`;
  expect(await shown(work(steps), RULE)).toEqual([bare('3 cover-screw'), REMOVED]);
});

test('it is told once, however often it is tightened', async () => {
  const tighten = '- tighten: cover-screw\n  torque: 3 N·m\n- tighten: cover-screw\n  torque: 9 ± 1 N·m';
  expect(await shown(work(`${OPEN}\n- install: cover-screw\n${tighten}`), RULE)).toHaveLength(2);
});

test('the builds on which the part is still off', async () => {
  const steps = `${OPEN}\n- install: [cover-seal, cover]\n  when: k1-a\n- install: cover-screw\n- tighten: cover-screw`;
  expect(await shown(work(steps), RULE)).toEqual([bare('5 cover-screw', ' (K1-B)'), REMOVED]);
});

test('a build that has no such part needs none', async () => {
  const family =
    'parts:\n  cover: { name: cover, sits-on: core, fastened-by: [cover-screw], unless: big-wheel }\n  wheel: { name: wheel, sits-on: core }\n  cap-nut: { name: cap nut, kind: nut, sits-on: core }';
  const head = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
  const example = workUnder(
    head,
    '- remove: [cover-screw, cover]\n- install: cover-screw\n- tighten: cover-screw',
    family,
  );
  expect((await shown(example, RULE))[0]).toBe(bare('3 cover-screw', ' (without the big wheel)'));
});

test('a nut on the shaft that it fastens may be run up on the bench', async () => {
  const family =
    'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut] }\n  cap-nut: { name: cap nut, kind: nut, sits-on: wheel, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m }';
  expect(await shown(work('- remove: [cap-nut, wheel]\n- install: cap-nut\n- tighten: cap-nut', family), RULE)).toEqual(
    [],
  );
});

test('a ring is seated over nothing', async () => {
  const ring = 'parts:\n  cover-screw: { name: cover ring, kind: retaining-ring, sits-on: core, frees-when: loose }';
  expect(
    await shown(work('- loosen: cover-screw\n- remove: [cover, cover-seal]\n- seat: cover-screw', ring), RULE),
  ).toEqual([
    '3 cover-screw: The cover ring is seated while the cover is not there; fit the cover first',
    REMOVED.replace('1', '2'),
  ]);
});

test('a fitting that is half typed may have been that of the part', async () => {
  expect(
    await shown(work(`${OPEN}\n- install: [cover-seal, cove]\n- install: cover-screw\n- tighten: cover-screw`), RULE),
  ).toEqual([]);
});
