import { expect, test } from 'vitest';
import { inHead } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'tool-not-listed';
const STEP = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]';

test('the fix adds the tool to a flow list, a block list or a single entry', async () => {
  for (const [list, wanted] of [
    ['tools: [torque-wrench-10]', 'tools: [torque-wrench-10, socket-8]'],
    ['tools:\n  - torque-wrench-10', 'tools:\n  - torque-wrench-10\n  - socket-8'],
    ['tools: torque-wrench-10', 'tools: [torque-wrench-10, socket-8]'],
  ] as const) {
    const mended = await fixed(inHead(list, STEP), RULE);
    expect(mended.files[mended.at]).toContain(`${wanted}\n`);
    expect(await reported(mended, RULE)).toEqual([]);
  }
});

test('a mention counts as a use, once an instruction does not use the tool itself', async () => {
  const mention = '- Set the <dial-gauge> on the nose.';
  const wanted = 'The dial gauge is used here but is not in the list of tools; add it to the list';
  expect(await reported(inHead('tools: []', mention), RULE)).toEqual([`<dial-gauge>: ${wanted}`]);
  expect(await reported(inHead('tools: []', `${mention}\n  with: dial-gauge`.replace('- ', '- say: ')), RULE)).toEqual([
    `dial-gauge: ${wanted}`,
  ]);
});
