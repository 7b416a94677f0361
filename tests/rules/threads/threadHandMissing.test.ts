import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { asStep, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'thread-hand-missing';
const MISSING =
  'The family does not state the hand of the cap nut that is turned here; state left or right for every build';

/** A step with a cap nut of the given keys, and other entries of the family. */
function nut(step: string, keys: string, more = '') {
  const part = `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core${keys} }`;
  return withFamily(inStep(step), `${part}${more}`);
}

async function familyAfter(example: ReturnType<typeof nut>, title?: string): Promise<string> {
  const mended = await fixed(example, RULE, title);
  expect(await reported(mended, RULE)).toEqual([]);
  return mended.files[EXAMPLE_PATHS.family] ?? '';
}

test('a hand that is stated nowhere is reported for all builds, and the fix states it in the family', async () => {
  const example = nut('- loosen: cap-nut', ', thread: M5×0.8');
  expect(await reported(example, RULE)).toEqual([`cap-nut: ${MISSING}`]);
  expect(await offered(example, RULE)).toEqual(['Write hand: right in the family', 'Write hand: left in the family']);
  expect(await familyAfter(example, 'Write hand: left in the family')).toContain('thread: M5×0.8, hand: left }');
});

test('a part on lines of its own gets a line', async () => {
  const part = 'parts:\n  cap-nut:\n    name: cap nut\n    kind: nut\n    thread: M5×0.8 # fine\n    sits-on: core';
  const example = withFamily(inStep('- loosen: cap-nut'), part);
  expect(await familyAfter(example)).toContain('    thread: M5×0.8 # fine\n    hand: right\n    sits-on: core\n');
});

test('a hand that is stated for one variant is missing for the other one', async () => {
  const example = nut('- tighten: cap-nut\n  torque: 5 ± 1 N·m', ', hand: { k1-a: right }');
  expect(await reported(example, RULE)).toEqual([`cap-nut: ${MISSING} (K1-B)`]);
  expect(await familyAfter(example, 'Write k1-b: left under hand in the family')).toContain(
    'hand: { k1-a: right, k1-b: left }',
  );
});

test('only the builds that the step serves count', async () => {
  expect(await reported(nut('- loosen: cap-nut\n  when: k1-a', ', hand: { k1-a: right }'), RULE)).toEqual([]);
  expect(await reported(nut('- loosen: cap-nut\n  when: k1-b', ', hand: { k1-a: right }'), RULE)).toEqual([
    `cap-nut: ${MISSING}`,
  ]);
  expect(await reported(nut('- loosen: cap-nut', ', hand: { k1-a: right, otherwise: left }'), RULE)).toEqual([]);
});

test('a hand that is missing for one outcome names the outcome', async () => {
  const outcome = '\nidentify:\n  nut-hand: { name: hand of the nut, values: [left, right], when: k1-b }';
  const example = nut('- loosen: cap-nut', ', hand: { k1-a: right, nut-hand=left: left }', outcome);
  expect(await reported(example, RULE)).toEqual([`cap-nut: ${MISSING} (K1-B, when the hand of the nut is right)`]);
  expect(await offered(example, RULE)).toContain('Write nut-hand=right: right under hand in the family');
});

test('what the designation or the mating part states is offered first', async () => {
  expect((await offered(nut('- loosen: cap-nut', ', thread: M5×0.8-LH'), RULE))[0]).toBe(
    'Write hand: left in the family, as its designation states',
  );
  const shaft = '\n  spindle: { name: spindle, kind: shaft, sits-on: core, hand: left }';
  expect((await offered(nut('- loosen: cap-nut', ', mates-with: spindle', shaft), RULE))[0]).toBe(
    'Write hand: left in the family, as the spindle states',
  );
});

test('removing, fitting and adjusting a nut turns it; a step reports it once', async () => {
  for (const verb of ['remove', 'install', 'adjust']) {
    expect(await reported(nut(`- ${verb}: cap-nut`, ''), RULE)).toHaveLength(1);
  }
  const once = nut('- install: cap-nut\n- tighten: cap-nut\n  torque: 5 ± 1 N·m', '');
  expect(await reported(once, RULE)).toEqual([`cap-nut: ${MISSING}`]);
});

test('what has no thread, or only carries one, is not turned', async () => {
  const ring = '\n  ring: { name: ring, kind: retaining-ring, sits-on: core }';
  expect(await reported(nut('- loosen: ring', ', hand: right', ring), RULE)).toEqual([]);
  const shaft = '\n  spindle: { name: spindle, kind: shaft, sits-on: core, thread: M5×0.8 }';
  expect(await reported(nut('- remove: spindle', ', hand: right', shaft), RULE)).toEqual([]);
});

test('the place in the family is shown, and nothing is said where the family or the part cannot be read', async () => {
  const { findings } = await checkExample(nut('- loosen: cap-nut', ''));
  expect(findings.find((one) => one.rule === RULE)?.related[0]?.uri).toMatch(/\.family\.yaml$/);
  expect(await reported(nut('- loosen: no-such-nut', ''), RULE)).toEqual([]);
  expect(await reported(nut('- loosen: cap-nut', ', hand: lefft'), RULE)).toEqual([]);
  expect(await reported(nut('- loosen: cap-nut', ', hand: { k1-x: left }'), RULE)).toEqual([]);
  expect(await reported(asStep('title: Nothing\ndo:\n  - loosen:'), RULE)).toEqual([]);
});
