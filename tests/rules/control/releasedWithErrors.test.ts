import { expect, test } from 'vitest';
import { type Example, inHead } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, reported } from '../../support/checkText';

const RULE = 'released-with-errors';
const TORQUE = '- tighten: cap-nut\n  torque: 45';
const CONCESSION =
  'concessions:\n  - { rule: torque-unit-missing, at: only-step, because: the maker gives a bare number, by: M. Oduya, until: 2099-03-31 }';

async function errorsOf(example: Example): Promise<number> {
  const { findings } = await checkExample(example);
  return findings.filter(({ rule, severity }) => severity === 'error' && rule !== RULE).length;
}

test('errors are counted, and it can be made a draft again', async () => {
  const example = inHead('status: released', TORQUE);
  const count = await errorsOf(example);
  expect(count).toBeGreaterThan(1);
  expect(await reported(example, RULE)).toEqual([
    `released: The procedure is released with ${count} errors; mend them, or make it a draft again`,
  ]);
  const mended = await fixed(example, RULE);
  expect(mended.files[mended.at]).toContain('status: draft');
  expect(await reported(mended, RULE)).toEqual([]);
});

test('what a concession lets stand is no error any more', async () => {
  const example = inHead('status: released', TORQUE);
  const conceded = inHead(`status: released\n${CONCESSION}`, TORQUE);
  expect(await errorsOf(conceded)).toBe((await errorsOf(example)) - 1);
  expect(await reported(conceded, RULE)).toEqual([
    expect.stringContaining(`with ${(await errorsOf(example)) - 1} errors`),
  ]);
});
