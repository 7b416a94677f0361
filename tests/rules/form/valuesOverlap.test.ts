import { expect, test } from 'vitest';
import { inFamily, inStep } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'values-overlap';
const nut = (rest: string) =>
  inFamily(`parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, ${rest} }`);

test('the builds of the overlap are named, and the other entry is pointed to', async () => {
  const example = nut('hand: { k1-a: right, big-wheel: left, k1-b: left }');
  const [finding] = (await checkExample(example)).findings.filter((one) => one.rule === RULE);
  expect(finding?.builds).toBe('K1-A with the big wheel');
  expect(finding?.about).toEqual(['big-wheel', 'k1-a']);
  const related = finding?.related[0]?.span;
  expect(example.files[example.at]?.slice(related?.start, related?.end)).toBe('k1-a');
});

test('entries that meet only on builds without the part do not overlap', async () => {
  expect(await reported(nut('unless: big-wheel, hand: { k1-a: right, big-wheel: left, k1-b: left }'), RULE)).toEqual(
    [],
  );
});

test('entries that no build meets together do not overlap, in a procedure no more than in a family', async () => {
  expect(await reported(nut('hand: { big-wheel: right, k1-b: left }'), RULE)).toEqual([]);
  const torque = inStep('- tighten: cap-nut\n  when: k1-b\n  torque: { k1-a: 4 N·m, big-wheel: 5 N·m, k1-b: 6 N·m }');
  expect(await reported(torque, RULE)).toEqual([]);
});
