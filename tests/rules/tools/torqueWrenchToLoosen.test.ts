import { describe, expect, test } from 'vitest';
import { inStep, withStores } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'torque-wrench-to-loosen';
const TOOLS = `tools:
  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, square: 6.3 mm }
  ratchet: { name: ratchet, kind: ratchet, square: 6.3 mm }
  ratchet-big: { name: big ratchet, kind: ratchet, square: 10 mm }`;
const example = (step: string) => withStores(inStep(step), TOOLS);

test('a handle with the same square is offered', async () => {
  for (const verb of ['loosen', 'remove']) {
    expect(await reported(example(`- ${verb}: cap-nut\n  with: [torque-wrench-10, socket-8]`), RULE)).toEqual([
      'torque-wrench-10: The torque wrench 2–10 N·m is not for loosening the cap nut; take ratchet',
    ]);
  }
  expect(await offered(example('- loosen: cap-nut\n  with: [torque-wrench-10, socket-8]'), RULE)).toEqual([
    'Take ratchet instead of torque-wrench-10',
  ]);
  const mended = await fixed(example('- loosen: cap-nut\n  with: [torque-wrench-10, socket-8]'), RULE);
  expect(mended.files[mended.at]).toContain('with: [ratchet, socket-8]');
});

describe('nothing is reported', () => {
  test.each([
    ['for tightening', '- tighten: cap-nut\n  with: [torque-wrench-10, socket-8]'],
    ['for another tool', '- loosen: cap-nut\n  with: [ratchet, socket-8]'],
    ['for a part that is not turned', '- remove: cover\n  with: torque-wrench-10'],
  ])('%s', async (_, step) => {
    expect(await reported(example(step), RULE)).toEqual([]);
  });
});
