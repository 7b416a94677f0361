import { expect, test } from 'vitest';
import { conceding, shown, work, workUnder } from './shown';

const RULE = 'check-missing';
const AFTER = 'checks:\n  free-turn: { say: The wheel turns freely., after: [cover] }';
const TOUCH = '- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover, cover-screw]';
const never = (builds = ''): string => `-2 only-step: The check free-turn is never made; make it at the end${builds}`;
const early = (line: number, builds = ''): string =>
  `${line} free-turn: The check free-turn is not made again after what it depends on was touched; make it again at the end${builds}`;

test('one that is never made stands at the last step, where a concession that names no step lets it stand', async () => {
  expect(await shown(work('- say: Look.'), RULE)).toEqual([never()]);
  expect(await conceding(work('- say: Look.'), RULE, 'free-turn', '')).toEqual({
    stands: [`${RULE} free-turn`],
    left: [],
  });
});

test('one that comes too early stands where it is made, and points to the last touch', async () => {
  expect(await shown(work(`- check: free-turn\n${TOUCH}`, AFTER), RULE)).toEqual([
    early(1),
    '-> 3 cover: The cover is fitted here',
  ]);
  expect(await shown(work(`${TOUCH}\n- check: free-turn`, AFTER), RULE)).toEqual([]);
});

test('where nothing was touched that it comes after, it is not due', async () => {
  expect(await shown(work('- loosen: cover-screw', AFTER), RULE)).toEqual([]);
  expect(await shown(work(`- check: free-turn\n- loosen: cover-screw`, AFTER), RULE)).toEqual([]);
});

test('the builds on which it is not made', async () => {
  expect(await shown(work(`${TOUCH}\n- check: free-turn\n  when: k1-a`, AFTER), RULE)).toEqual([never(' (K1-B)')]);
  const only = AFTER.replace(', after', ', when: k1-a, after');
  expect(await shown(work(`${TOUCH}\n- check: free-turn\n  when: k1-a`, only), RULE)).toEqual([]);
});

test('one that failed is made again once that is mended', async () => {
  const steps = '- check: free-turn\n  if-not:\n    do:\n      - loosen: cap-nut';
  expect(await shown(work(steps), RULE)).toEqual([
    '1 free-turn: The check free-turn may fail here and is not made again then; make it again at the end of that way (when "The wheel turns freely" does not hold)',
  ]);
  expect(await shown(work(`${steps}\n      - check: free-turn`), RULE)).toEqual([]);
  expect(await shown(work(steps.replace('    do:', '    reject: true\n    do:')), RULE)).toEqual([]);
});

test('what fails and is touched on its way is made again after that', async () => {
  const steps = `${TOUCH}\n- check: free-turn\n  if-not:\n    do:\n      - remove: cover`;
  expect(await shown(work(steps, AFTER), RULE)).toEqual([
    early(3, ' (when "The wheel turns freely" does not hold)'),
    '-> 6 cover: The cover is taken off here',
  ]);
});

test('work that ends with parts needs none, and what is half typed may be the check', async () => {
  expect(await shown(workUnder('ends: parts', '- say: Look.'), RULE)).toEqual([]);
  expect(await shown(work('- check: free-tur'), RULE)).toEqual([]);
  expect(await shown(work('- check:'), RULE)).toEqual([]);
});
