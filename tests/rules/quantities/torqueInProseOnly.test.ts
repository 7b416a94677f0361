import { expect, test } from 'vitest';
import { asStep, inHead, inStep } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'torque-in-prose-only';

test('own words of a tightening without a torque are reported at the torque, and the fix writes the key', async () => {
  const example = inStep('- tighten: cap-nut\n  say: Tighten the cap nut to 41 in-lb.\n  with: socket-8');
  expect(await reported(example, RULE)).toEqual([
    '41 in-lb: The torque 41 in-lb of the cap nut stands in a sentence only; write it as the torque of this instruction',
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain(
    '          - tighten: cap-nut\n            torque: 41 lbf·in\n            say: Tighten',
  );
  expect(await reported(mended, RULE)).toEqual([]);
});

test('the key is written between braces too', async () => {
  const mended = await fixed(inStep('- { tighten: cap-nut, say: Tighten it to 4.6 N·m. }'), RULE);
  expect(mended.files[mended.at]).toContain('- { tighten: cap-nut, torque: 4.6 N·m, say:');
});

test('a plain sentence becomes an instruction, with its words kept', async () => {
  const example = inStep('- Tighten the cap nut to 4.6 N·m (41 lbf·in).');
  expect(await reported(example, RULE)).toHaveLength(1);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain(
    '- tighten: cap-nut\n            torque: 4.6 N·m (41 lbf·in)\n            say: Tighten the cap nut to',
  );
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a title, a warning and what is said before the start count at their place', async () => {
  const title = asStep('title: Tighten the cap nut to 4.6 N·m\ndo:\n  - install: cap-nut');
  expect((await reported(title, RULE))[0]).toMatch(/^4\.6 N·m: /);
  const warning = inStep('- install: cap-nut\n  warning: Torque the nut to 4.6 N·m at once.');
  expect(await reported(warning, RULE)).toHaveLength(1);
  const start = inHead('before-you-start:\n  - notice: All screws are tightened to 9 N·m.');
  expect(await reported(start, RULE)).toHaveLength(1);
});

test('a torque that the instruction or the step states is not in prose only', async () => {
  const own = inStep('- tighten: cap-nut\n  torque: 4.6 N·m\n  say: Tighten the cap nut to 4.6 N·m.');
  expect(await reported(own, RULE)).toEqual([]);
  const title = asStep('title: Tighten the cap nut to 4.6 N·m\ndo:\n  - tighten: cap-nut');
  expect(await reported(title, RULE)).toEqual([]);
  const other = asStep('title: Tighten the cap nut to 9 N·m\ndo:\n  - tighten: cap-nut');
  expect(await reported(other, RULE)).toHaveLength(1);
  const start = 'before-you-start:\n  - notice: The cover screws are tightened to 9 ± 1 N·m.';
  expect(await reported(inHead(start, '- tighten: cover-screw'), RULE)).toEqual([]);
});

test('the torque of another fastener that is only mentioned is no finding', async () => {
  const other = inStep('- tighten: cap-nut\n  say: Tighten the cap nut. The cover screw is tightened to 9 N·m.');
  expect(await reported(other, RULE)).toEqual([]);
  const later = inStep('- install: cover\n  notice: The cap nut is tightened to 4.6 N·m in a later step.');
  expect(await reported(later, RULE)).toEqual([]);
});

test('other values, and sentences that tighten nothing, are left alone', async () => {
  for (const text of ['Tighten the cap nut with the 8 mm socket.', 'Set the load to 9 N·m.', 'Heat it to 120 °C.']) {
    expect(await reported(inStep(`- ${text}`), RULE)).toEqual([]);
  }
});
