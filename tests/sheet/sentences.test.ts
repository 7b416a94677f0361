import { expect, test } from 'vitest';
import { plural } from '../../server/src/core/sheet/sentences/english/grammar';
import { instructionOf, textOf } from './fixtures/bench';

test('words are marked by what they mean', async () => {
  const { text } = await instructionOf('- { apply: threadlocker, to: cap-nut, with: socket-8 }');
  expect(text.map((run) => `${run.kind}:${run.text}`)).toEqual([
    'text:Apply ',
    'consumable:threadlocker',
    'text: to the ',
    'part:cap nut',
    'text: with the ',
    'tool:8 mm socket',
    'text:.',
  ]);
});

test('own wording replaces the sentence, and the call-out stays', async () => {
  const one = await instructionOf('- { tighten: left-nut, say: Pull <left-nut> up by hand. }');
  expect(textOf(one.text)).toBe('Pull the left nut up by hand.');
  expect(one.torque?.setting).toMatchObject({ kind: 'one', value: { primary: '5 ± 0.5 N·m' } });
});

test.each([
  ['screw', 'screws'],
  ['bush', 'bushes'],
  ['assembly', 'assemblies'],
  ['nut of the clamp', 'nuts of the clamp'],
  ['torque wrench 2–10 N·m', 'torque wrenches 2–10 N·m'],
  ['ring pliers', 'ring pliers'],
])('the plural of %s is %s', (one, many) => {
  expect(plural(one)).toBe(many);
});
