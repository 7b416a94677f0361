import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'set-mixed';
const set = (nut: string, plate = ''): string =>
  `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover]${nut} }\n  lock-plate: { name: lock plate, sits-on: core, behind: [cap-nut]${plate} }`;
const SET = set(', renew: always, comes-with: [lock-plate]');
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, lock-plate]';
const FIT = '- install: [lock-plate, cap-nut]\n- tighten: cap-nut';
const mixed = (line: number, builds = ''): string =>
  `${line} cap-nut: The lock plate was in use before and is kept beside a new cap nut; they are renewed as a set, so renew it as well${builds}`;

test('the fitting of the new one is underlined', async () => {
  expect(await shown(work(`${OPEN}\n${FIT}`, SET), RULE)).toEqual([mixed(2)]);
  expect(await shown(work(`${OPEN}\n- discard: lock-plate\n${FIT}`, SET), RULE)).toEqual([]);
});

test('an old one that never came off is as old', async () => {
  const steps = '- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut\n- tighten: cap-nut';
  expect(await shown(work(steps, SET), RULE)).toEqual([mixed(2)]);
});

test('whichever of the two says that they are a set', async () => {
  const turned = set(', renew: always', ', comes-with: [cap-nut]');
  expect(await shown(work(`${OPEN}\n${FIT}`, turned), RULE)).toEqual([mixed(2)]);
});

test('two old ones, two new ones, and one that is left off', async () => {
  expect(await shown(work(`${OPEN}\n${FIT}`, set(', comes-with: [lock-plate]')), RULE)).toEqual([]);
  const both = set(', renew: always, comes-with: [lock-plate]', ', renew: always');
  expect(await shown(work(`${OPEN}\n${FIT}`, both), RULE)).toEqual([]);
  const off = '- install: cap-nut\n- tighten: cap-nut';
  expect(await shown(workUnder('ends: parts', `${OPEN}\n${off}`, SET), RULE)).toEqual([]);
});

test('the builds, and the way on which only one is renewed', async () => {
  const build = `${OPEN}\n- discard: lock-plate\n  when: k1-a\n${FIT}`;
  expect(await shown(work(build, SET), RULE)).toEqual([mixed(4, ' (K1-B)')]);
  const either = set(', renew: on-condition, comes-with: [lock-plate]');
  const decide = '- inspect: cap-nut\n  if-not: { replace: cap-nut }\n- say: Look.\n  when: cap-nut=renewed';
  expect(await shown(work(`${OPEN}\n${decide}\n${FIT}`, either), RULE)).toEqual([
    mixed(6, ' (when the cap nut is renewed)'),
  ]);
});

test('what is half typed behind it may be what renews the other', async () => {
  expect(await shown(work(`${OPEN}\n${FIT}\n- discard: lock`, SET), RULE)).toEqual([]);
});
