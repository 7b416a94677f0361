import { expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { fixed, offered, reported } from '../../support/checkText';

const RULE = 'id-ambiguous';
const example = withFamily(inStep('- say: Look at the <cap-nut>.'), 'checks:\n  cap-nut: { say: The nut is tight. }');

test('each kind that shares the id is offered', async () => {
  expect(await reported(example, RULE)).toEqual([
    '<cap-nut>: "<cap-nut>" may mean a part or a check; write <part/cap-nut> or <check/cap-nut>',
  ]);
  expect(await offered(example, RULE)).toEqual(['Write <part/cap-nut>', 'Write <check/cap-nut>']);
  expect(await reported(await fixed(example, RULE), RULE)).toEqual([]);
});

test('an id of a kind that no text can name is no rival', async () => {
  const group = withFamily(inStep('- say: Look at the <cap-nut>.'), 'balance-groups:\n  cap-nut: { members: [wheel] }');
  expect(await reported(group, RULE)).toEqual([]);
});
