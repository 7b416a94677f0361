import { expect, test } from 'vitest';
import { asStep, inStep } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';
import { formFindings } from './formFindings';

const RULE = 'key-unknown';

test('a misspelt key is told once, with what was meant', async () => {
  const example = asStep('titel: Do the work\ndo:\n  - install: cover');
  expect((await formFindings(example)).map((finding) => finding.message)).toEqual([
    '"titel" is no key of a step; did you mean "title"?',
  ]);
  const mended = await fixed(example, RULE);
  expect(await formFindings(mended)).toEqual([]);
});

test('a key that nothing comes near is not guessed at', async () => {
  const [message] = await reported(inStep('- tighten: cap-nut\n  colour: red'), RULE);
  expect(message).toBe('colour: "colour" is no key of a "tighten" instruction; take it out, or write it as a note');
});

test('a second verb gets an entry of its own with what stands below it', async () => {
  const example = inStep('- install: cover\n  remove: cap-nut\n  with: socket-8');
  expect((await reported(example, RULE))[0]).toMatch(/^remove: One instruction does one thing/);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain(
    '          - install: cover\n          - remove: cap-nut\n            with: socket-8\n',
  );
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a misspelt verb is told as one', async () => {
  expect(await reported(inStep('- instal: cover'), 'key-unknown')).toEqual([
    'instal: "instal" is no verb that an instruction can start with; did you mean "install"?',
  ]);
});

test('a language that is not spoken is told at the text that it stands in', async () => {
  expect((await reported(inStep('- say: { text: Lift it., fr: Soulevez. }'), 'key-unknown'))[0]).toContain(
    '"fr" is no key of a text with translations, which are de, en and es',
  );
});
