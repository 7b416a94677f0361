import { describe, expect, test } from 'vitest';
import { inHead, inStep, withFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-tool-missing';

test('a torque of the family counts as one of the instruction', async () => {
  expect(await reported(inStep('- tighten: cap-nut\n  with: socket-8'), RULE)).toEqual([
    'cap-nut: The cap nut is tightened to 4.6 ± 0.3 N·m, but no torque tool is named; add one under "with"',
  ]);
});

test('it names the builds where only some have a torque', async () => {
  const nut =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: { k1-a: 4 ± 0.3 N·m } }';
  expect(await reported(withFamily(inStep('- tighten: cap-nut'), nut), RULE)).toEqual([
    'cap-nut: The cap nut is tightened to 4 ± 0.3 N·m, but no torque tool is named; add one under "with" (K1-A)',
  ]);
});

describe('nothing is reported', () => {
  test.each([
    ['for an angle alone', '- tighten: cap-nut\n  angle: 90°\n  with: socket-8'],
    ['for a tool that no stores have', '- tighten: cap-nut\n  with: torque-wrench-9'],
    ['for a part without a torque', '- tighten: cover\n  with: socket-8'],
    ['for a torque wrench', '- tighten: cap-nut\n  with: [socket-8, torque-wrench-10]'],
  ])('%s', async (_, step) => {
    expect(await reported(inStep(step), RULE)).toEqual([]);
  });
});

test('the fix adds a wrench whose range covers the torque, and lists it', async () => {
  const step = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: socket-8';
  const mended = await fixed(inHead('tools: [socket-8]', step), RULE);
  expect(mended.files[mended.at]).toContain('with: [socket-8, torque-wrench-10]\n');
  expect(mended.files[mended.at]).toContain('tools: [socket-8, torque-wrench-10]\n');
  expect(await offered(inStep('- tighten: cap-nut\n  torque: 9.8 ± 1 N·m'), RULE)).toEqual([]);
});

test('a misspelt key may be the one that names the tool', async () => {
  expect(
    await reported(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  wiht: socket-8'), 'torque-tool-missing'),
  ).toEqual([]);
});

test('a text that cannot be read has the one finding that says so', async () => {
  const { findings } = await checkExample(inStep('- tighten: cap-nut\n  torque: "9 N·m\n  with: socket-8'));
  expect(findings.map((finding) => finding.rule)).toEqual(['not-yaml']);
});

test('a torque that cannot be read is not repeated', async () => {
  expect(
    (await reported(inStep('- tighten: cap-nut\n  torque: 5 ±\n  with: socket-8'), 'torque-tool-missing'))[0],
  ).toContain('is tightened to a torque, but');
});
