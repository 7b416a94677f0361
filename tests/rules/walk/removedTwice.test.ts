import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'removed-twice';
const off = (line: number, builds = ''): string =>
  `${line} cover-screw: The cover screw is not in place here; leave this out, or fit the cover screw before it${builds}`;
const REMOVED = '-> 1 cover-screw: The cover screw is taken off here';

test.each(['loosen', 'remove', 'tighten'])('to %s what is off points to where it came off', async (verb) => {
  expect(await shown(work(`- remove: [cover-screw, cover]\n- ${verb}: cover-screw`), RULE)).toEqual([off(2), REMOVED]);
});

test('of the pieces, the one too many is told', async () => {
  const one = '- remove: cover-screw\n  count: 1';
  expect(await shown(work(`${one}\n- remove: cover-screw`), RULE)).toEqual([]);
  const found = await shown(work(`${one}\n${one}\n- loosen: cover-screw`), RULE);
  expect(found).toEqual([off(5), REMOVED.replace('1', '3')]);
});

test('the builds on which it came off before', async () => {
  const steps = '- remove: cover-screw\n  when: k1-a\n- remove: cover-screw';
  expect(await shown(work(steps), RULE)).toEqual([off(3, ' (K1-A)'), REMOVED]);
  expect(await shown(work(`${steps}\n  unless: k1-a`), RULE)).toEqual([]);
});

test('on the way on which it came off', async () => {
  const steps =
    '- measure: end-play\n  with: dial-gauge\n  if-not:\n    do:\n      - remove: cover-screw\n- loosen: cover-screw';
  expect(await shown(work(steps), RULE)).toEqual([
    off(6, ' (when the end play is not right)'),
    REMOVED.replace('1', '5'),
  ]);
});

test('work that starts with parts has nothing to take off, and no place to point to', async () => {
  expect(await shown(workUnder('starts: parts', '- loosen: cover-screw'), RULE)).toEqual([off(1)]);
});

test('what rides on a part that is off can still come off it', async () => {
  const ring = 'parts:\n  ring: { name: ring, sits-on: wheel }';
  expect(await shown(work('- remove: [cover-screw, cover, cap-nut, wheel, ring]', ring), RULE)).toEqual([]);
});

test('a fitting that is half typed may have put it back', async () => {
  expect(await shown(work('- remove: cover-screw\n- install: cover-scre\n- remove: cover-screw'), RULE)).toEqual([]);
  expect(await shown(work('- remove: cover-screw\n- install:cover-screw\n- remove: cover-screw'), RULE)).toEqual([]);
});
