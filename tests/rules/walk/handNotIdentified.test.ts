import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'hand-not-identified';
const OPEN = '- remove: [cover-screw, cover, cover-seal]';
const family = (hand: string, more = ''): string =>
  `identify:\n  nut-hand: { name: hand of the nut, values: [left, right]${more} }\nparts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { ${hand} }, torque: 4.6 ± 0.3 N·m, behind: [cover] }`;
const BOTH = 'nut-hand=left: left, nut-hand=right: right';
const unknown = (line: number, builds = ''): string =>
  `${line} cap-nut: The cap nut is turned before the hand of the nut is identified; identify it first${builds}`;

test('whatever turns it first is told, and only that', async () => {
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut\n- remove: cap-nut`, family(BOTH)), RULE)).toEqual([unknown(2)]);
  expect(await shown(work(`${OPEN}\n- remove: cap-nut`, family(BOTH)), RULE)).toEqual([unknown(2)]);
  expect(await shown(work(`${OPEN}\n- tighten: cap-nut`, family(BOTH)), RULE)).toEqual([unknown(2)]);
});

test('identified afterwards is too late, before is right', async () => {
  const late = `${OPEN}\n- loosen: cap-nut\n- identify: nut-hand`;
  expect(await shown(work(late, family(BOTH)), RULE)).toEqual([unknown(2)]);
  expect(await shown(work(`- identify: nut-hand\n${OPEN}\n- loosen: cap-nut`, family(BOTH)), RULE)).toEqual([]);
});

test('only the variant whose hand the bench must tell', async () => {
  const byVariant = family(`k1-a: right, ${BOTH}`, ', when: k1-b');
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut`, byVariant), RULE)).toEqual([unknown(2, ' (K1-B)')]);
  const known = `${OPEN}\n- identify: nut-hand\n  when: k1-b\n- loosen: cap-nut`;
  expect(await shown(work(known, byVariant), RULE)).toEqual([]);
});

test('identified on one build only leaves the other', async () => {
  const steps = `${OPEN}\n- identify: nut-hand\n  when: k1-a\n- loosen: cap-nut`;
  expect(await shown(work(steps, family(BOTH)), RULE)).toEqual([unknown(4, ' (K1-B)')]);
});

test('a hand that the variant tells, and other work on the nut, need nothing', async () => {
  expect(await shown(work(`${OPEN}\n- loosen: cap-nut`), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- clean: cap-nut\n- inspect: cap-nut`, family(BOTH)), RULE)).toEqual([]);
});

test('an identification that is half typed may have been that of the hand', async () => {
  expect(await shown(work(`${OPEN}\n- identify:\n- loosen: cap-nut`, family(BOTH)), RULE)).toEqual([]);
});
