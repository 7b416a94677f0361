import { expect, test } from 'vitest';
import { inHead } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const told = (head: string) => reported(inHead(head), 'same-person-approves');

test('who has prepared it cannot approve it', async () => {
  expect(await told('prepared-by: R. Ashdown\napproved-by: R. Ashdown')).toEqual([
    'R. Ashdown: R. Ashdown has prepared this procedure and has approved it as well; let somebody else do one of the two',
  ]);
});

test('a name is the same however it is spaced', async () => {
  expect(await told('checked-by: M.Oduya\napproved-by: m. oduya')).toHaveLength(1);
});

test('three people are told nothing, and nor is a procedure that nobody has signed yet', async () => {
  expect(await told('prepared-by: A\nchecked-by: B\napproved-by: C')).toEqual([]);
  expect(await told('prepared-by: A')).toEqual([]);
});
