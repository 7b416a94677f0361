import { expect, test } from 'vitest';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../../../server/src/core/rules/exampleDocuments';
import { inStep, withFiles } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const RULE = 'amount-missing';

test('threadlocker without an amount is underlined', async () => {
  expect(await reported(inStep('- apply: threadlocker\n  to: cap-nut'), RULE)).toEqual([
    'threadlocker: Nothing says how much threadlocker is applied; write an amount such as "1 drop" or "a thin film"',
  ]);
  expect(await reported(inStep('- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop'), RULE)).toEqual([]);
});

test('own words may say how much', async () => {
  const says = (text: string) => reported(inStep(`- apply: threadlocker\n  to: cap-nut\n  say: ${text}`), RULE);
  expect(await says('Put two drops on the thread.')).toEqual([]);
  expect(await says('Put threadlocker on the thread.')).toHaveLength(1);
});

test('sealant and grease count, a solvent does not', async () => {
  const stores = `${EXAMPLE_STORES}  flange-seal: { name: flange sealant, kind: sealant }\n  grease: { name: grease, kind: grease }\n`;
  const check = (step: string) => reported(withFiles(inStep(step), { [EXAMPLE_PATHS.stores]: stores }), RULE);
  expect(await check('- apply: [flange-seal, grease]\n  to: cover')).toHaveLength(2);
  expect(await check('- apply: degreaser\n  to: cover')).toEqual([]);
});
