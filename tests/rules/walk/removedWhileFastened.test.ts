import { expect, test } from 'vitest';
import { conceding, shown, work, workUnder } from './shown';

const RULE = 'removed-while-fastened';
const held = (line: number, builds = ''): string =>
  `${line} cover: The cover is taken off while the cover screw still holds it; take off or loosen the cover screw first${builds}`;

test('the part is underlined, not the verb nor the list, and its fastener does not show again later', async () => {
  const example = work('- remove: [cover, cover-screw]\n- remove: cap-nut');
  expect(await shown(example, RULE)).toEqual([held(1)]);
  expect(await shown(example, 'removed-twice')).toEqual([]);
});

test('where the fastener was tightened before is pointed to', async () => {
  const steps =
    '- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover, cover-screw]\n- tighten: cover-screw\n- remove: cover';
  expect(await shown(work(steps), RULE)).toEqual([held(4), '-> 3 cover-screw: The cover screw is tightened here']);
});

test('one of two pieces still holds; both off do not', async () => {
  const one = '- remove: cover-screw\n  count: 1';
  expect(await shown(work(`${one}\n- remove: cover`), RULE)).toEqual([held(3)]);
  expect(await shown(work(`${one}\n${one}\n- remove: cover`), RULE)).toEqual([]);
});

test('on the way on which the fastener was not taken off, in the words of the check', async () => {
  const steps = '- check: free-turn\n  if-not:\n    do:\n      - remove: cover-screw\n- remove: cover';
  expect(await shown(work(steps), RULE)).toEqual([held(5, ' (when "The wheel turns freely" holds)')]);
});

test('what takes the place of the fastener holds as well', async () => {
  const family =
    'parts:\n  cover-screw: { name: cover screw, kind: screw, sits-on: core, unless: big-wheel }\n  lock-pin: { name: lock pin, kind: pin, sits-on: core, when: big-wheel, instead-of: cover-screw }';
  const head = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
  expect(await shown(workUnder(head, '- remove: cover-screw\n- remove: cover', family), RULE)).toEqual([
    '2 cover: The cover is taken off while the lock pin still holds it; take off or loosen the lock pin first (K1-A with the big wheel)',
  ]);
  expect(await shown(workUnder(head, '- remove: [cover-screw, lock-pin]\n- remove: cover', family), RULE)).toEqual([]);
});

test('a loose clamp lets go, a loose screw does not', async () => {
  const clamp =
    'parts:\n  cover-screw: { name: cover screw, kind: clamp, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m }';
  const steps = '- loosen: cover-screw\n- remove: cover';
  expect(await shown(work(steps, clamp), RULE)).toEqual([]);
  expect(await shown(work(steps), RULE)).toEqual([held(2)]);
});

test('two fasteners are two findings, and a concession names the one that it lets stand', async () => {
  const family =
    'parts:\n  cover: { name: cover, sits-on: core, fastened-by: [cover-screw, pin] }\n  pin: { name: pin, kind: pin, sits-on: core }';
  const example = work('- remove: cover', family);
  expect(await shown(example, RULE)).toHaveLength(2);
  expect(await conceding(example, RULE, 'cover, pin')).toEqual({
    stands: [`${RULE} cover pin`],
    left: [held(1).slice('1 cover: '.length)],
  });
});

test('a removal that is half typed may have been that of the fastener', async () => {
  expect(await shown(work('- remove: cover-scr\n- remove: cover'), RULE)).toEqual([]);
});
