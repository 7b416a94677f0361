import { describe, expect, test } from 'vitest';
import { inStep, withFamily, withStores } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'socket-missing';
const TOOLS = `tools:
  ratchet: { name: ratchet, kind: ratchet }
  torque-spanner: { name: preset torque spanner, kind: torque-wrench, range: 1..9 N·m, size: 8 mm }
  odd: { name: odd tool, kind: other }`;

const found = (step: string, family?: string): Promise<string[]> => {
  const example = withStores(inStep(step), TOOLS);
  return reported(family === undefined ? example : withFamily(example, family), RULE);
};

test('a wrench alone takes hold of nothing; the socket of the thread is offered', async () => {
  expect(await found('- tighten: cap-nut\n  with: torque-wrench-10')).toEqual([
    'cap-nut: The torque wrench 2–10 N·m is named, but nothing that takes hold of the cap nut; add socket-8',
  ]);
  const mended = await fixed(withStores(inStep('- tighten: cap-nut\n  with: torque-wrench-10'), TOOLS), RULE);
  expect(mended.files[mended.at]).toContain('with: [torque-wrench-10, socket-8]');
});

test('so is a ratchet that loosens', async () => {
  expect(await found('- loosen: cover-screw\n  with: ratchet')).toEqual([
    'cover-screw: The ratchet is named, but nothing that takes hold of the cover screw; add socket-10',
  ]);
});

test('a fastener that no tool of several fits is told of', async () => {
  const step = '- tighten: [cap-nut, cover-screw]\n  with: [torque-wrench-10, socket-8]';
  const screw =
    'parts:\n  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, hand: right, thread: M6×1, across-flats: 10 mm }';
  expect(await found(step, screw)).toEqual([
    'cover-screw: None of the tools named here fits the cover screw, 10 mm across flats; add socket-10',
  ]);
  expect(await offered(withStores(withFamily(inStep(step), screw), TOOLS), RULE)).toEqual(['Add socket-10 to "with"']);
  // A flange screw of the small series has 8 mm, and the family does not say that this is none.
  expect(await found(step)).toEqual([]);
});

describe('nothing is reported', () => {
  test.each([
    ['without a tool that turns', '- tighten: cap-nut'],
    ['for a wrench with a head of its own', '- tighten: cap-nut\n  with: torque-spanner'],
    ['beside a tool of no particular kind', '- tighten: cap-nut\n  with: [torque-wrench-10, odd]'],
    ['beside a tool that no stores have', '- tighten: cap-nut\n  with: [torque-wrench-10, socket-88]'],
    ['for what is not turned', '- install: cover\n  with: ratchet'],
    ['while a key is being typed', '- tighten: cap-nut\n  with: torque-wrench-10\n  hol'],
  ])('%s', async (_, step) => {
    expect(await found(step)).toEqual([]);
  });

  test('for a knurled part, which is turned by hand', async () => {
    const knurled =
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, drive: knurl }';
    expect(await found('- tighten: cap-nut\n  with: torque-wrench-10', knurled)).toEqual([]);
  });
});
