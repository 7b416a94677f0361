import { expect, test } from 'vitest';
import { conceding, shown, work, workUnder } from './shown';

const RULE = 'left-off';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const off = (place: string, part: string, builds = ''): string =>
  `${place}: The ${part} is not in place when the work is over; fit it before the end${builds}`;

test('it stands where the part came off last', async () => {
  const twice = '- remove: cover-screw\n- install: cover-screw\n- remove: cover-screw';
  expect(await shown(work(twice), RULE)).toEqual([off('3 cover-screw', 'cover screw')]);
});

test('of the pieces, one that stays off is told at the fitting that stops short', async () => {
  expect(await shown(work('- remove: cover-screw\n- install: cover-screw\n  count: 1'), RULE)).toEqual([
    off('2 cover-screw', 'cover screw'),
  ]);
  expect(await shown(work('- remove: cover-screw\n  count: 1\n- install: cover-screw\n  count: 1'), RULE)).toEqual([]);
});

test('each part for itself, on the builds on which it stays off, and a concession lets one stand', async () => {
  const example = work(`${OPEN}\n- install: [cover, cover-screw]\n- install: cover-seal\n  when: k1-a`);
  expect(await shown(example, RULE)).toEqual([off('1 cover-seal', 'cover seal', ' (K1-B)')]);
  expect(await conceding(work(OPEN), RULE, 'cover')).toEqual({
    stands: [`${RULE} cover`],
    left: [off('', 'cover screw').slice(2), off('', 'cover seal').slice(2)],
  });
});

test('on the way on which it came off', async () => {
  const steps = '- measure: end-play\n  with: dial-gauge\n  if-not:\n    do:\n      - remove: cover-screw';
  expect(await shown(work(steps), RULE)).toEqual([
    off('5 cover-screw', 'cover screw', ' (when the end play is not right)'),
  ]);
  expect(await shown(work(steps.replace('    do:', '    reject: true\n    do:')), RULE)).toEqual([]);
});

test('one of the two wheels must be in place, whichever the unit leaves with', async () => {
  const family =
    'parts:\n  wheel: { name: wheel, sits-on: core, unless: big-wheel }\n  wide-wheel: { name: wide wheel, sits-on: core, when: big-wheel, instead-of: wheel }\n  cap-nut: { name: cap nut, kind: nut, sits-on: core }';
  const head = 'adds: [big-wheel]';
  expect(await shown(workUnder(head, '- remove: wheel\n- install: wheel', family), RULE)).toEqual([
    off('-2 only-step', 'wide wheel', ' (K1-A with the big wheel, received without the big wheel)'),
  ]);
  expect(await shown(workUnder(head, '- remove: wheel\n- install: [wheel, wide-wheel]', family), RULE)).toEqual([]);
});

test('work that ends with parts leaves all off, and one that ends with an assembly what it does not name', async () => {
  expect(await shown(workUnder('ends: parts', OPEN), RULE)).toEqual([]);
  const assembly = 'assemblies:\n  cartridge: { name: cartridge, parts: [core, wheel, cap-nut] }';
  const inner = '- remove: [cover-screw, cover, cover-seal, cap-nut]';
  expect(await shown(workUnder('ends: cartridge', inner, assembly), RULE)).toEqual([off('1 cap-nut', 'cap nut')]);
});

test('while something is half typed, nobody can say what is missing', async () => {
  expect(await shown(work(`${OPEN}\n- install: cov`), RULE)).toEqual([]);
});
