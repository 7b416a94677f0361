import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'spun-too-soon';
const GROUP = 'balance-groups:\n  rotor: { name: rotor, members: [wheel, core], grade: G 6.3 }';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const LOCK = '- apply: threadlocker\n  to: cap-nut';
const FIT = '- install: [wheel, cap-nut]';
const loose = (line: number, builds = ''): string =>
  `${line} rotor: The rotor is spun while the cap nut is not tight; tighten it first${builds}`;
const wet = (line: number, builds = ''): string =>
  `${line} rotor: The rotor is spun before the threadlocker of the cap nut has set; wait until it has cured${builds}`;

test('a nut that is only run up, or tightened below its torque', async () => {
  expect(await shown(work(`${OPEN}\n${FIT}\n- balance: rotor`, GROUP), RULE)).toEqual([
    loose(3),
    '-> 2 cap-nut: The cap nut is fitted here',
  ]);
  const low = `${OPEN}\n${FIT}\n- tighten: cap-nut\n  torque: 2 N·m\n- balance: rotor`;
  expect(await shown(work(low, GROUP), RULE)).toEqual([loose(5), '-> 3 cap-nut: The cap nut is tightened here']);
  expect(await shown(work(`${OPEN}\n${FIT}\n- tighten: cap-nut\n- balance: rotor`, GROUP), RULE)).toEqual([]);
});

test('wet threadlocker is told where the nut is tight, and points to the tightening', async () => {
  const steps = `${OPEN}\n${LOCK}\n${FIT}\n- tighten: cap-nut\n- balance: rotor`;
  expect(await shown(work(steps, GROUP), RULE)).toEqual([wet(6), '-> 5 cap-nut: The cap nut is tightened here']);
});

test.each([
  ['cure', 0],
  ['24 h', 0],
  ['1 d', 0],
  ['23 h', 2],
])('a wait of %s', async (time, findings) => {
  const steps = `${OPEN}\n${LOCK}\n${FIT}\n- tighten: cap-nut\n- wait: ${time}\n- balance: rotor`;
  expect(await shown(work(steps, GROUP), RULE)).toHaveLength(findings);
});

test('a wait before the tightening lets nothing set', async () => {
  const steps = `${OPEN}\n${LOCK}\n${FIT}\n- wait: cure\n- tighten: cap-nut\n- balance: rotor`;
  expect((await shown(work(steps, GROUP), RULE))[0]).toBe(wet(7));
});

test('members on the bench need no fastener, and a fastener of another part no torque', async () => {
  expect(await shown(work(`${OPEN}\n- balance: rotor`, GROUP), RULE)).toEqual([]);
  expect(await shown(work('- loosen: cover-screw\n- balance: rotor', GROUP), RULE)).toEqual([]);
});

test('the builds on which the nut is loose', async () => {
  const steps = `- remove: [cover-screw, cover]\n- loosen: cap-nut\n  when: k1-b\n- balance: rotor`;
  expect((await shown(work(steps, GROUP), RULE))[0]).toBe(loose(4, ' (K1-B)'));
});

test('a nut that is spun loose and stays so is told once', async () => {
  const example = work(`${OPEN}\n${FIT}\n- balance: rotor\n- balance: rotor`, GROUP);
  expect(await shown(example, RULE)).toHaveLength(2);
  expect(await shown(example, 'left-loose')).toEqual([]);
});

test('a tightening that is half typed may have been that of the nut', async () => {
  expect(await shown(work(`${OPEN}\n${FIT}\n- tighten: cap\n- balance: rotor`, GROUP), RULE)).toEqual([]);
});
