import { expect, test } from 'vitest';
import { inStep } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'consumable-named-in-prose';

test('a consumable in a sentence is asked for under "using", and a tool is not', async () => {
  expect(await reported(inStep('- Wipe the face with degreaser and set the dial gauge.'), RULE)).toEqual([
    'degreaser: "degreaser" stands in this sentence but not under "using"; add degreaser',
  ]);
});

test('what is applied, or kept away, is not reported', async () => {
  const applied = '- apply: threadlocker\n  to: cap-nut\n  say: Put the threadlocker on the thread.';
  expect(await reported(inStep(applied), RULE)).toEqual([]);
  expect(await reported(inStep('- remove: cover\n  notice: Keep the degreaser away from the seal.'), RULE)).toEqual([]);
});

test('the fix turns a plain sentence into one that uses it', async () => {
  const mended = await fixed(inStep('- Wipe the face with degreaser.'), RULE);
  expect(mended.files[mended.at]).toContain(
    '          - say: Wipe the face with degreaser.\n            using: degreaser\n',
  );
});
