import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'cleaning-forbidden';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const FAMILY =
  'parts:\n  wheel: { name: wheel, sits-on: core, behind: [cover], never-clean-with: [caustic, blast] }\n  cap-nut: { name: cap nut, sits-on: core, behind: [cover], never-clean-with: [blast] }';
const spoils = (place: string, part: string, way: string, builds = ''): string =>
  `${place}: The ${part} must not be cleaned by "${way}", which the family lists under never-clean-with; clean it in another way${builds}`;

test('of a list, the parts that it spoils', async () => {
  expect(await shown(work(`${OPEN}\n- clean: [wheel, cover, cap-nut]\n  by: caustic`, FAMILY), RULE)).toEqual([
    spoils('2 wheel', 'wheel', 'caustic'),
  ]);
  expect(await shown(work(`${OPEN}\n- clean: [wheel, cover, cap-nut]\n  by: blast`, FAMILY), RULE)).toEqual([
    spoils('2 wheel', 'wheel', 'blast'),
    spoils('2 cap-nut', 'cap nut', 'blast'),
  ]);
});

test('another way, or none said, is let pass', async () => {
  expect(await shown(work(`${OPEN}\n- clean: wheel\n  by: wash\n- clean: wheel`, FAMILY), RULE)).toEqual([]);
});

test('a new piece is spoiled as well, and a place on it', async () => {
  const steps = `${OPEN}\n- discard: wheel\n- clean: wheel\n  by: blast\n  at: bore`;
  expect(await shown(work(steps, FAMILY), RULE)).toEqual([spoils('3 wheel', 'wheel', 'blast')]);
});

test('it holds whatever was half typed before it', async () => {
  const steps = `${OPEN}\n- remove: whe\n- clean: wheel\n  by: blast`;
  expect(await shown(work(steps, FAMILY), RULE)).toEqual([spoils('3 wheel', 'wheel', 'blast')]);
  expect(await shown(work(`${OPEN}\n- clean: wheel\n  by: blas`, FAMILY), RULE)).toEqual([]);
});

test('only the builds that have the part, and only those that clean it so', async () => {
  const big =
    'parts:\n  wheel: { name: wheel, sits-on: core, behind: [cover], unless: big-wheel }\n  wide-wheel: { name: wide wheel, sits-on: core, behind: [cover], when: big-wheel, instead-of: wheel, never-clean-with: [blast] }';
  const head = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
  const steps = '- remove: [cover-screw, cover]\n- clean: [wheel, wide-wheel]\n  by: blast';
  expect(await shown(workUnder(head, steps, big), RULE)).toEqual([
    spoils('2 wide-wheel', 'wide wheel', 'blast', ' (K1-A with the big wheel)'),
  ]);
  expect(await shown(work(`${OPEN}\n- clean: wheel\n  by: blast\n  when: k1-b`, FAMILY), RULE)).toEqual([
    spoils('2 wheel', 'wheel', 'blast', ' (K1-B)'),
  ]);
});
