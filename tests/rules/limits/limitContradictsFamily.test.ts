import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../../server/src/core/rules/exampleDocuments';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { fixed, reported } from '../../support/checkText';

const RULE = 'limit-contradicts-family';
const step = (accept: string) => inStep(`- measure: end-play\n  accept: ${accept}`);

test('what the step accepts beyond the family is told, and written as the family has it', async () => {
  const wrong = step('≤ 0.09 mm');
  expect(await reported(wrong, RULE)).toEqual([
    '≤ 0.09 mm: The step accepts ≤ 0.09 mm for the end play, and the family 0.04..0.09 mm; accept no more than that',
  ]);
  const mended = await fixed(wrong, RULE);
  expect(mended.files[EXAMPLE_PATHS.procedure]).toContain('accept: 0.04..0.09 mm');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('a stricter step, the same in inches and a value that is only recorded are right', async () => {
  for (const accept of ['0.05..0.08 mm', '0.0016..0.0035 in', 'record-only', '0.065 ± 0.025 mm']) {
    expect(await reported(step(accept), RULE)).toEqual([]);
  }
  expect(await reported(step('0.001..0.004 in'), RULE)).toHaveLength(1);
});

test('builds are compared one by one', async () => {
  const limit = 'limits:\n  end-play: { name: end play, accept: { k1-a: 0.04..0.09 mm, k1-b: 0.04..0.12 mm } }';
  expect(await reported(withFamily(step('0.04..0.12 mm'), limit), RULE)).toEqual([
    '0.04..0.12 mm: The step accepts 0.04..0.12 mm for the end play, and the family 0.04..0.09 mm; accept no more than that (K1-A)',
  ]);
  const both = '{ k1-a: 0.04..0.09 mm, otherwise: 0.04..0.12 mm }';
  expect(await reported(withFamily(step(both), limit), RULE)).toEqual([]);
});

test('a value of another kind cannot be what the family means', async () => {
  expect(await reported(step('≤ 0.09 bar'), RULE)).toHaveLength(1);
});

test('a check with a value is compared as well, and a sentence is not', async () => {
  const check = 'checks:\n  free-turn: { say: The wheel turns freely., accept: ≤ 0.02 N·m }';
  expect(await reported(withFamily(inStep('- check: free-turn\n  accept: ≤ 0.03 N·m'), check), RULE)).toHaveLength(1);
  expect(await reported(inStep('- check: It turns.\n  accept: ≤ 0.03 N·m'), RULE)).toEqual([]);
});

test('half-typed values conclude nothing', async () => {
  for (const accept of ['', '0.04', '{ k1-a: }', '[0.2 mm]']) expect(await reported(step(accept), RULE)).toEqual([]);
});
