import { describe, expect, test } from 'vitest';
import { inStep, withStores } from '../../../server/src/core/rules/examples';
import { offered, reported } from '../../support/checkText';

const RULE = 'torque-tool-one-way';
const TOOLS = `tools:
  right-wrench: { name: click wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, direction: right }
  both-wrench: { name: reversible wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, direction: both }
  both-small: { name: small reversible wrench, kind: torque-wrench, range: 0.5..2 N·m, accuracy: 4 %, direction: both }`;
const example = (part: string, tools: string) => withStores(inStep(`- tighten: ${part}\n  with: [${tools}]`), TOOLS);

test('it is told for the builds with the left-hand thread, and a wrench for both ways is offered', async () => {
  expect(await reported(example('cap-nut', 'right-wrench, socket-8'), RULE)).toEqual([
    'right-wrench: The click wrench measures clockwise only, and the cap nut has a left-hand thread; take both-wrench (K1-B)',
  ]);
  expect(await offered(example('cap-nut', 'right-wrench, socket-8'), RULE)).toEqual([
    'Take both-wrench instead of right-wrench',
  ]);
});

describe('nothing is reported', () => {
  test.each([
    ['for a right-hand thread', 'cover-screw', 'right-wrench, socket-10'],
    ['for a wrench that measures both ways', 'cap-nut', 'both-wrench, socket-8'],
    ['where nobody says which way it measures', 'cap-nut', 'torque-wrench-10, socket-8'],
    ['beside one that measures both ways', 'cap-nut', 'right-wrench, both-wrench, socket-8'],
  ])('%s', async (_, part, tools) => {
    expect(await reported(example(part, tools), RULE)).toEqual([]);
  });
});
