import { expect, test } from 'vitest';
import { EXAMPLE_KIT } from '../../../server/src/core/rules/exampleDocuments';
import { asStep, inProcedure, inStep } from '../../../server/src/core/rules/examples';
import { keyMissing } from '../../../server/src/core/rules/form/keyMissing';
import { fixed, reported } from '../../support/checkText';

const RULE = 'key-missing';

test('keys that are missing at one place are told together', async () => {
  expect(await reported(inProcedure('', 'witnessmark: 1\nprocedure: OP-1\ntitle: Rebuild\n'), RULE)).toEqual([
    'witnessmark: A procedure needs "revision", "family" and "phases", which are missing here; write them in',
  ]);
});

test('an instruction without a verb is told at its first key', async () => {
  expect((await reported(inStep('- note: take care'), RULE))[0]).toMatch(/^note: This instruction has no verb/);
});

test('a step without a title is told, and a key without a value counts as there', async () => {
  expect((await reported(asStep('do:\n  - install: cover'), RULE))[0]).toContain('A step needs "title"');
  expect(await reported(asStep('title:\ndo:\n  - install: cover'), RULE)).toEqual([]);
});

test('the version is the one value that can be written unseen', async () => {
  const mended = await fixed(keyMissing.doc.wrong, RULE);
  expect(mended.files[mended.at]).toBe(EXAMPLE_KIT);
});

test('a word of the trade, or a capital, is led to the verb', async () => {
  expect(await reported(inStep('- unscrew: cap-nut'), RULE)).toEqual([
    'unscrew: "unscrew" is no verb that an instruction can start with; did you mean "loosen" or "remove"?',
  ]);
  const mended = await fixed(inStep('- Install: cover'), RULE);
  expect(mended.files[mended.at]).toContain('- install: cover\n');
});

test('a verb that its colon did not make a key is no sentence', async () => {
  const glued = inStep('- remove:cover');
  expect(await reported(glued, RULE)).toEqual([
    'remove:cover: "remove:" is read as the start of a sentence; write a space behind the colon',
  ]);
  const mended = await fixed(glued, RULE);
  expect(mended.files[mended.at]).toContain('- remove: cover\n');
  expect((await reported(inStep('- remove'), RULE))[0]).toContain('write a colon behind it');
  expect(await reported(inStep('- Remove.'), RULE)).toEqual([]);
});
