import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'fitted-twice';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const CLOSE = '- install: [cover-seal, cover, cover-screw]';
const inPlace = (line: number, builds = ''): string =>
  `${line} cover: The cover is in place already; leave this out, or take the cover off before it${builds}`;

test('what never came off points nowhere, what was fitted before points there', async () => {
  expect(await shown(work('- remove: cover-screw\n- install: cover'), RULE)).toEqual([inPlace(2)]);
  expect(await shown(work(`${OPEN}\n${CLOSE}\n- install: cover`), RULE)).toEqual([
    inPlace(3),
    '-> 2 cover: The cover is fitted here',
  ]);
});

test('pieces that are missing may be fitted; one more may not', async () => {
  const one = '- remove: cover-screw\n  count: 1';
  expect(await shown(work(`${one}\n- install: cover-screw`), RULE)).toEqual([]);
  expect((await shown(work(`${one}\n- install: cover-screw\n- install: cover-screw`), RULE))[0]).toMatch(
    /^4 cover-screw: The cover screw is in place already/,
  );
});

test('a second seal on top of the old one is a second fitting', async () => {
  expect(await shown(work('- remove: [cover-screw, cover]\n- press: cover-seal'), RULE)).toEqual([
    '2 cover-seal: The cover seal is in place already; leave this out, or take the cover seal off before it',
  ]);
});

test('the builds on which it is in place', async () => {
  const steps = `- remove: cover-screw\n- remove: cover\n  unless: k1-b\n- install: cover`;
  expect(await shown(work(steps), RULE)).toEqual([inPlace(4, ' (K1-B)')]);
});

test('the base goes on its stand at any time, and what comes as parts may be fitted', async () => {
  expect(await shown(work('- install: core'), RULE)).toEqual([]);
  expect(await shown(workUnder('starts: parts', '- install: [core, wheel, cap-nut, cover-seal, cover]'), RULE)).toEqual(
    [],
  );
});

test('the second time round a loop, it is the loop that is told', async () => {
  const steps = `${OPEN}\n${CLOSE}\n- check: free-turn\n  if-not: { go-to: only-step, at-most: 2, then: Ask the office. }`;
  expect(await shown(work(steps), RULE)).toEqual([]);
});

test('a removal that is half typed may have been that of the part', async () => {
  expect(await shown(work('- remove: cover-screw\n- remove: cov\n- install: cover'), RULE)).toEqual([]);
});
