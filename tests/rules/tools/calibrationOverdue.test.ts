import { describe, expect, test } from 'vitest';
import { type Example, inHead, inStep, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'calibration-overdue';
const TOOLS = `tools:
  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, calibration-due: 2026-10-31 }
  dial-gauge: { name: dial gauge, kind: indicator, resolution: 0.001 mm, range: 0..10 mm, calibration-due: 2026-11-01 }
  hot-plate: { name: hot plate, kind: hot-plate, calibration-due: 2020-01-01 }`;
const TIGHTEN = '- tighten: cap-nut\n  with: [torque-wrench-10, socket-8]';

const found = (example: Example, today?: string): Promise<string[]> =>
  reported(withStores(example, TOOLS), RULE, today);

test('it is told once, in the list of tools, from the day after', async () => {
  const twice = inHead('tools: [torque-wrench-10, socket-8]', `${TIGHTEN}\n${TIGHTEN}`);
  expect(await found(twice)).toEqual([
    'torque-wrench-10: The calibration of the torque wrench 2–10 N·m ended on 2026-10-31; have it calibrated or take another one',
  ]);
  expect(await found(twice, '2026-10-31')).toEqual([]);
  expect(await found(inStep('- measure: end-play\n  with: dial-gauge'))).toEqual([]);
  expect(await found(inStep('- measure: end-play\n  with: dial-gauge'), '2026-11-02')).toHaveLength(1);
});

test('a tool that is not listed is told of where it is first used', async () => {
  const { findings } = await checkExample(withStores(inHead('tools: [socket-8]', TIGHTEN), TOOLS));
  const finding = findings.find(({ rule }) => rule === RULE);
  const text = inHead('tools: [socket-8]', TIGHTEN).files['procedures/op-9.procedure.yaml'] ?? '';
  expect(text.slice(0, finding?.span.start)).toMatch(/with: \[$/);
  expect(finding?.related.map(({ uri }) => uri)).toEqual([expect.stringContaining('bay-1.stores.yaml')]);
});

describe('nothing is reported', () => {
  test.each([
    ['for a tool that is only listed', '- install: cover'],
    ['for one that neither tightens nor measures', '- heat: wheel\n  until: 80 ± 5 °C\n  with: hot-plate'],
    ['for one without a day', '- loosen: cap-nut\n  with: socket-8'],
  ])('%s', async (_, step) => {
    expect(await found(inStep(step))).toEqual([]);
  });
});
