import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'seal-not-renewed';
const OPEN = '- remove: [cover-screw, cover]';
const old = (line: number, builds = ''): string =>
  `${line} cover: The cover goes on over the old cover seal; take the old cover seal off and fit a new one first${builds}`;
const OPENED = '-> 1 cover: The cover is taken off here';

test('the part that closes the joint is underlined and points to where it was opened', async () => {
  expect(await shown(work(`${OPEN}\n- install: cover`), RULE)).toEqual([old(2), OPENED]);
  expect(await shown(work(`${OPEN}\n- remove: cover-seal\n- install: [cover-seal, cover]`), RULE)).toEqual([]);
});

test('a new seal is spent as well once its joint was opened', async () => {
  const steps = `- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover, cover-screw]\n${OPEN}\n- install: cover`;
  expect(await shown(work(steps), RULE)).toEqual([old(4), OPENED.replace('1', '3')]);
});

test('a trial fit over the old seal is told, one with no seal in place is not', async () => {
  expect(await shown(work(`${OPEN}\n- install: cover\n  trial: true`), RULE)).toEqual([old(2), OPENED]);
  const bare = `${OPEN}\n- remove: cover-seal\n- install: cover\n  trial: true`;
  expect(await shown(work(bare), RULE)).toEqual([]);
});

test('the builds on which the seal stays', async () => {
  const steps = `${OPEN}\n- remove: cover-seal\n  when: k1-a\n- install: cover-seal\n  when: k1-a\n- install: cover`;
  expect(await shown(work(steps), RULE)).toEqual([old(6, ' (K1-B)'), OPENED]);
});

test('two seals of a joint are two findings', async () => {
  const pair = 'parts:\n  outer-seal: { name: outer seal, kind: gasket, sits-on: core, seals: cover, renew: always }';
  const steps = `${OPEN}\n- remove: cover-seal\n- install: [cover-seal, cover]`;
  expect(await shown(work(steps, pair), RULE)).toEqual([old(3).replaceAll('cover seal', 'outer seal'), OPENED]);
  expect(await shown(work(`${OPEN}\n- install: cover`, pair), RULE)).toHaveLength(4);
});

test('the joint of a part and of its substitute is one', async () => {
  const family =
    'parts:\n  cover: { name: cover, sits-on: core, fastened-by: [cover-screw], unless: big-wheel }\n  wide-cover: { name: wide cover, sits-on: core, when: big-wheel, instead-of: cover }';
  const head = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }';
  const steps = '- remove: [cover-screw, cover, wide-cover]\n- install: [cover, wide-cover]';
  const found = await shown(workUnder(head, steps, family), RULE);
  expect(found[2]).toBe(
    old(3).replace('3 cover: The cover', '2 wide-cover: The wide cover').concat(' (K1-A with the big wheel)'),
  );
});

test('a removal that is half typed may have been that of the seal', async () => {
  expect(await shown(work(`${OPEN}\n- remove: cover-sea\n- install: cover`), RULE)).toEqual([]);
});
