import { describe, expect, test } from 'vitest';
import { inStep, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, offered, reported } from '../../support/checkText';

const RULE = 'torque-tool-too-coarse';
const TOOLS = `tools:
  fine-wrench: { name: fine wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 1 % }
  fixed-wrench: { name: fixed wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 0.5 N·m }
  class-wrench: { name: class wrench, kind: torque-wrench, range: 2..10 N·m, torque-type: II A }
  big-class-wrench: { name: big class wrench, kind: torque-wrench, range: 4..20 N·m, torque-type: Type II class A }
  plain-wrench: { name: plain wrench, kind: torque-wrench, range: 2..10 N·m }`;

const example = (torque: string, tool: string) =>
  withStores(inStep(`- tighten: cap-nut\n  ${torque}\n  with: [${tool}, socket-8]`), TOOLS);
const found = (torque: string, tool: string): Promise<string[]> => reported(example(torque, tool), RULE);

test('the deviation at the torque has to fit in its tolerance', async () => {
  expect(await found('torque: 5 ± 0.1 N·m', 'torque-wrench-10')).toEqual([
    'torque-wrench-10: The torque wrench 2–10 N·m may be out by ± 4 %, here ± 0.2 N·m, which is more than 5 ± 0.1 N·m allows; take fine-wrench',
  ]);
  expect(await found('torque: 5 ± 0.2 N·m', 'torque-wrench-10')).toEqual([]);
  expect(await offered(example('torque: 5 ± 0.1 N·m', 'torque-wrench-10'), RULE)).toEqual([
    'Take fine-wrench instead of torque-wrench-10',
  ]);
});

test('the smaller side of a tolerance counts, and a range has one', async () => {
  expect(await found('torque: 5 +0.5/-0.1 N·m', 'torque-wrench-10')).toHaveLength(1);
  expect(await found('torque: 4.9..5.1 N·m', 'torque-wrench-10')).toHaveLength(1);
  expect(await found('torque: 5 N·m ± 3 %', 'torque-wrench-10')).toHaveLength(1);
  expect(await found('torque: 5 N·m ± 4 %', 'torque-wrench-10')).toEqual([]);
});

test('an accuracy may be a torque', async () => {
  expect(await found('torque: 5 ± 0.3 N·m', 'fixed-wrench')).toEqual([
    'fixed-wrench: The fixed wrench may be out by ± 10 %, here ± 0.5 N·m, which is more than 5 ± 0.3 N·m allows; take torque-wrench-10, fine-wrench or class-wrench',
  ]);
});

test('ISO 6789 stands in for an accuracy that the stores do not state: 6 % up to 10 N·m, 4 % above', async () => {
  expect(await found('torque: 5 ± 0.25 N·m', 'class-wrench')).toEqual([
    'class-wrench: The class wrench may be out by ± 6 % (ISO 6789 for its class), here ± 0.3 N·m, which is more than 5 ± 0.25 N·m allows; take torque-wrench-10, fine-wrench or big-class-wrench',
  ]);
  expect(await found('torque: 5 ± 0.25 N·m', 'big-class-wrench')).toEqual([]);
});

describe('nothing is reported', () => {
  test.each([
    ['for a torque without a tolerance', 'torque: 5 N·m', 'torque-wrench-10'],
    ['for a limit', 'torque: ≥ 5 N·m', 'torque-wrench-10'],
    ['for a pass on the way', 'passes: [3 ± 0.01 N·m, 5 ± 0.3 N·m]', 'torque-wrench-10'],
    ['for a tool that nothing is known of', 'torque: 5 ± 0.01 N·m', 'plain-wrench'],
    ['where one of the tools is fine enough', 'torque: 5 ± 0.1 N·m', 'torque-wrench-10, fine-wrench'],
    ['where the tool is out of range, which has a finding of its own', 'torque: 15 ± 0.1 N·m', 'torque-wrench-10'],
  ])('%s', async (_, torque, tool) => {
    expect(await found(torque, tool)).toEqual([]);
  });
});

test('the working ends with deviation and tolerance', async () => {
  const { findings } = await checkExample(example('torque: 5 ± 0.1 N·m', 'torque-wrench-10'));
  const [working] = findings.find((finding) => finding.rule === RULE)?.working() ?? [];
  expect(working?.steps.map(({ symbol, value }) => [symbol, Number(value.toPrecision(6))])).toEqual([
    ['M_set', 5],
    ['A', 4],
    ['ΔM', 0.2],
    ['T', 0.1],
  ]);
});
