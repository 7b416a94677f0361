import { describe, expect, test } from 'vitest';
import { inStep, withStores } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, reported } from '../../support/checkText';

const RULE = 'extension-not-corrected';
const TOOLS = `tools:
  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, length: 200 mm }
  short-wrench: { name: short wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 % }
  crow-foot-8: { name: 8 mm crow-foot, kind: crow-foot, size: 8 mm, offset: 30 mm }
  square-foot-8: { name: square crow-foot, kind: crow-foot, size: 8 mm, offset: 30 mm, set-at: 90° }
  angled-foot-8: { name: angled crow-foot, kind: crow-foot, size: 8 mm, offset: 30 mm, set-at: 45° }
  bar: { name: extension bar, kind: extension, length: 150 mm }`;

const example = (tools: string, more = '') =>
  withStores(inStep(`- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [${tools}]${more}`), TOOLS);
const found = (tools: string, more?: string): Promise<string[]> => reported(example(tools, more), RULE);

test('straight on, the setting is torque × lever / (lever + offset)', async () => {
  expect(await found('torque-wrench-10, crow-foot-8')).toEqual([
    'crow-foot-8: The 8 mm crow-foot makes the lever longer; say that it is set at 90° to the wrench, or give the setting: straight on, 4 N·m for 4.6 ± 0.3 N·m (otherwise 5.29 N·m reaches the fastener)',
  ]);
});

test('at an angle that the stores state, it is worked out for that', async () => {
  expect(await found('torque-wrench-10, angled-foot-8')).toEqual([
    'angled-foot-8: The angled crow-foot is set at 45° to the wrench; for 4.6 ± 0.3 N·m the wrench has to be set to 4.16 N·m, and the instruction does not say so',
  ]);
});

test('without the length of the wrench the setting cannot be worked out', async () => {
  expect(await found('short-wrench, crow-foot-8')).toEqual([
    'crow-foot-8: The 8 mm crow-foot makes the lever longer; say that it is set at 90° to the wrench, or state the length of the short wrench in the stores and give the setting here',
  ]);
});

describe('nothing is reported', () => {
  test.each([
    ['for a head that the stores say is set square', 'torque-wrench-10, square-foot-8', ''],
    ['where the instruction sets it square', 'torque-wrench-10, crow-foot-8', '\n  notice: Set the crow-foot at 90°.'],
    ['in words', 'torque-wrench-10, crow-foot-8', '\n  notice: Set the crow-foot at a right angle.'],
    [
      'where the instruction gives the setting',
      'torque-wrench-10, crow-foot-8',
      '\n  notice: Set the wrench to 4.0 N·m.',
    ],
    ['or in another unit', 'torque-wrench-10, crow-foot-8', '\n  notice: Set the wrench to 35 lbf·in.'],
    ['for a bar in line with the socket', 'torque-wrench-10, bar, socket-8', ''],
    ['for a head without a torque wrench', 'crow-foot-8', ''],
  ])('%s', async (_, tools, more) => {
    expect(await found(tools, more)).toEqual([]);
  });

  test('but the wrong setting is no correction', async () => {
    expect(await found('torque-wrench-10, crow-foot-8', '\n  notice: Set the wrench to 4.6 N·m.')).toHaveLength(1);
  });
});

test('the fix sets it square, which needs no number', async () => {
  const mended = await fixed(example('torque-wrench-10, crow-foot-8'), RULE);
  expect(mended.files[mended.at]).toContain('notice: Set the 8 mm crow-foot at 90° to the wrench.');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('the working shows lever, extension and setting, and what is missing', async () => {
  const working = async (tools: string) => {
    const { findings } = await checkExample(example(tools));
    return findings.find((finding) => finding.rule === RULE)?.working()[0];
  };
  const known = await working('torque-wrench-10, angled-foot-8');
  expect(known?.steps.at(-1)).toMatchObject({ symbol: 'M_set', unit: 'N·m' });
  expect(known?.steps.at(-1)?.value).toBeCloseTo((4.6 * 200) / (200 + 30 * Math.SQRT1_2), 9);
  expect((await working('short-wrench, crow-foot-8'))?.missing).toEqual([
    'the length of the short wrench',
    'the angle at which the 8 mm crow-foot is set',
  ]);
});
