import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'disposition-missing';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const undecided = (line: number, builds = ''): string =>
  `${line} wheel: The wheel is renewed on condition, but nothing decides whether it is used again; inspect or measure it before it is fitted, with "if-not"${builds}`;
const REMOVED = '-> 1 wheel: The wheel is taken off here';
const SWAP =
  'parts:\n  wheel: { name: wheel, sits-on: core, unless: big-wheel }\n  wide-wheel: { name: wide wheel, sits-on: core, when: big-wheel, instead-of: wheel }';
const swapped = (fate: string): Promise<string[]> =>
  shown(workUnder('adds: [big-wheel]', `- remove: wheel\n${fate}- install: wide-wheel`, SWAP), RULE);

test('an inspection without a consequence decides nothing', async () => {
  expect(await shown(work(`${OPEN}\n- inspect: wheel\n- install: wheel`), RULE)).toEqual([undecided(3), REMOVED]);
});

test.each([
  'inspect: wheel\n  if-not: { replace: wheel }',
  'inspect: wheel\n  if-not: { reject: true }',
  'discard: wheel',
])('%s decides', async (decision) => {
  expect(await shown(work(`${OPEN}\n- ${decision}\n- install: wheel`), RULE)).toEqual([]);
});

test('a decision that comes behind the fitting is too late, and a trial fit needs none', async () => {
  const late = '- install: wheel\n- inspect: wheel\n  if-not: { replace: wheel }';
  expect(await shown(work(`${OPEN}\n${late}`), RULE)).toEqual([undecided(2), REMOVED]);
  expect(await shown(work(`${OPEN}\n- install: wheel\n  trial: true`), RULE)).toEqual([]);
});

test('the builds on which nothing decides', async () => {
  const steps = `${OPEN}\n- inspect: wheel\n  if-not: { replace: wheel }\n  when: k1-b\n- install: wheel`;
  expect(await shown(work(steps), RULE)).toEqual([undecided(5, ' (K1-A)'), REMOVED]);
});

test('a part that leaves the unit for good needs a fate, where it does', async () => {
  expect(await swapped('')).toEqual([
    '1 wheel: The wheel comes off and does not go back, and nothing says what becomes of it; discard it or return it (K1-A with the big wheel, received without the big wheel)',
  ]);
  expect(await swapped('- discard: wheel\n')).toEqual([]);
  expect(await swapped('- return: wheel\n')).toEqual([]);
});

test('thrown away on one build only leaves the other open', async () => {
  expect(await swapped('- discard: wheel\n  when: k1-b\n')).toHaveLength(1);
});

test('a fate or a decision that is half typed may be that of the part', async () => {
  expect(await swapped('- discard: whe\n')).toEqual([]);
  expect(await shown(work(`${OPEN}\n- inspect: whe\n- install: wheel`), RULE)).toEqual([]);
});
