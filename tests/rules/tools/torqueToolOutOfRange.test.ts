import { describe, expect, test } from 'vitest';
import { inStep, withFamily, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, offered, reported } from '../../support/checkText';

const RULE = 'torque-tool-out-of-range';
const TOOLS = `tools:
  torque-wrench-50: { name: big wrench, kind: torque-wrench, range: 10..50 N·m, accuracy: 4 % }
  dial-wrench: { name: dial wrench, kind: torque-wrench, range: 0..30 N·m, accuracy: 2 % }
  inch-wrench: { name: inch wrench, kind: torque-wrench, range: 20..100 lbf·in, accuracy: 4 % }
  plain-wrench: { name: plain wrench, kind: torque-wrench }`;

const example = (torque: string, tool: string) =>
  withStores(inStep(`- tighten: cap-nut\n  ${torque}\n  with: [${tool}, socket-8]`), TOOLS);
const found = (torque: string, tool: string): Promise<string[]> => reported(example(torque, tool), RULE);

test('the tool is underlined, with its range and the ones that reach', async () => {
  expect(await found('torque: 4.6 ± 0.3 N·m', 'torque-wrench-50')).toEqual([
    'torque-wrench-50: The big wrench begins above the 4.6 ± 0.3 N·m of the cap nut (range 10..50 N·m); take torque-wrench-10 or inch-wrench',
  ]);
  expect(await found('torque: 12 ± 1 N·m', 'torque-wrench-10')).toEqual([
    'torque-wrench-10: The torque wrench 2–10 N·m ends below the 12 ± 1 N·m of the cap nut (range 2..10 N·m); take torque-wrench-50 or dial-wrench',
  ]);
  expect(await found('torque: 60 ± 5 N·m', 'torque-wrench-50')).toEqual([
    'torque-wrench-50: The big wrench ends below the 60 ± 5 N·m of the cap nut (range 10..50 N·m); no torque tool of the stores reaches it',
  ]);
  expect(await offered(example('torque: 12 ± 1 N·m', 'torque-wrench-10'), RULE)).toHaveLength(2);
});

test('the family states the torque where the instruction does not, and by build', async () => {
  const nut =
    'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: { k1-a: 4.6 ± 0.3 N·m, k1-b: 14 ± 1 N·m } }';
  const step = inStep('- tighten: cap-nut\n  with: [torque-wrench-10, socket-8]');
  expect(await reported(withStores(withFamily(step, nut), TOOLS), RULE)).toEqual([
    'torque-wrench-10: The torque wrench 2–10 N·m ends below the 14 ± 1 N·m of the cap nut (range 2..10 N·m); take torque-wrench-50 or dial-wrench (K1-B)',
  ]);
});

test('each pass has to be reached, by one of the tools', async () => {
  expect(await found('passes: [1 ± 0.5 N·m, 4.6 ± 0.3 N·m]', 'torque-wrench-10')).toHaveLength(1);
  expect(await found('passes: [4.6 ± 0.3 N·m, 14 ± 1 N·m]', 'torque-wrench-10, torque-wrench-50')).toEqual([]);
});

describe('the target has to lie within', () => {
  test.each([
    ['at the end of the range, its tolerance beyond', 'torque: 10 ± 1 N·m', 'torque-wrench-10'],
    ['a range of torques by its middle', 'torque: 8..12 N·m', 'torque-wrench-50'],
    ['other units', 'torque: 41 ± 3 lbf·in', 'torque-wrench-10'],
    ['a range in other units', 'torque: 4.6 ± 0.3 N·m', 'inch-wrench'],
    ['a tool whose range nobody states', 'torque: 99 ± 1 N·m', 'plain-wrench'],
    ['an angle alone', 'angle: 60 ± 5°', 'torque-wrench-50'],
  ])('%s', async (_, torque, tool) => {
    expect(await found(torque, tool)).toEqual([]);
  });

  test('but not in the lowest fifth of a scale from zero', async () => {
    expect(await found('torque: 6 ± 0.5 N·m', 'dial-wrench')).toEqual([]);
    expect(await found('torque: 4.6 ± 0.3 N·m', 'dial-wrench')).toEqual([
      'dial-wrench: The 4.6 ± 0.3 N·m of the cap nut lies in the lowest fifth of the dial wrench (range 0..30 N·m), where its accuracy is not vouched for; take torque-wrench-10 or inch-wrench',
    ]);
  });

  test('a reading that is added may lift it to where the range begins', async () => {
    const plus = (torque: string, tool: string): Promise<string[]> => found(`torque: ${torque}\n  plus: drag`, tool);
    expect(await plus('9.5 ± 0.5 N·m', 'torque-wrench-50')).toEqual([]);
    expect(await plus('12 ± 0.5 N·m', 'torque-wrench-10')).toHaveLength(1);
  });
});

test('the working shows range, torque and deviation', async () => {
  const { findings } = await checkExample(example('torque: 60 ± 3 lbf·in', 'torque-wrench-50'));
  const [working] = findings.find((finding) => finding.rule === RULE)?.working() ?? [];
  expect(working?.rows).toEqual([
    { label: 'Range of the tool', text: '10..50 N·m' },
    { label: 'Torque', text: '6.8 ± 0.3 N·m lies below it' },
    { label: 'Accuracy', text: 'as the stores state it' },
  ]);
  expect(working?.missing).toEqual([]);
});
