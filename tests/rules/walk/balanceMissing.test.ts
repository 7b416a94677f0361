import { expect, test } from 'vitest';
import { shown, work, workUnder } from './shown';

const RULE = 'balance-missing';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const DECIDE = '- inspect: wheel\n  if-not: { replace: wheel }';
const FIT = '- install: [wheel, cap-nut]\n- tighten: cap-nut';
const GROUP = 'balance-groups:\n  rotor: { name: rotor, members: [wheel, core], permissible: 0.2 g·mm }';
const unbalanced = (line: number, builds = ''): string =>
  `${line} wheel: The rotor gets a new member and is not balanced afterwards; balance it once its parts have their torque${builds}`;

test('the fitting of the new member is underlined, on the way on which it is new', async () => {
  const steps = `${OPEN}\n${DECIDE}\n${FIT}`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([unbalanced(4, ' (when the wheel is renewed)')]);
  expect(await shown(work(`${steps}\n- balance: rotor`, GROUP), RULE)).toEqual([]);
});

test('balanced where the wheel is renewed is enough', async () => {
  const steps = `${OPEN}\n${DECIDE}\n${FIT}\n- balance: rotor\n  when: wheel=renewed`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([]);
});

test('a fastener that is turned afterwards undoes it', async () => {
  const steps = `${OPEN}\n- discard: wheel\n${FIT}\n- balance: rotor\n- loosen: cap-nut\n- tighten: cap-nut`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([unbalanced(3)]);
});

test('turning something else does not', async () => {
  const steps = `${OPEN}\n- discard: wheel\n${FIT}\n- balance: rotor\n- install: [cover-seal, cover, cover-screw]\n- tighten: cover-screw`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([]);
});

test('the builds on which it is not balanced', async () => {
  const steps = `${OPEN}\n- discard: wheel\n${FIT}\n- balance: rotor\n  unless: k1-b`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([unbalanced(3, ' (K1-B)')]);
});

test('members that are all used again, and work that ends with parts', async () => {
  const kept = `${OPEN}\n- inspect: wheel\n  if-not: { reject: true }\n${FIT}`;
  expect(await shown(work(kept, GROUP), RULE)).toEqual([]);
  expect(await shown(workUnder('ends: parts', `${OPEN}\n- discard: wheel\n${FIT}`, GROUP), RULE)).toEqual([]);
});

test('the substitute of a member is one', async () => {
  const family = `${GROUP}\nparts:\n  wheel: { name: wheel, sits-on: core, unless: big-wheel }\n  wide-wheel: { name: wide wheel, sits-on: core, when: big-wheel, instead-of: wheel }`;
  const steps = '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: [wheel, wide-wheel, cap-nut]';
  expect(await shown(workUnder('adds: [big-wheel]', steps, family), RULE)).toEqual([
    unbalanced(2, ' (K1-A with the big wheel, received without the big wheel)').replace('2 wheel', '2 wide-wheel'),
  ]);
});
