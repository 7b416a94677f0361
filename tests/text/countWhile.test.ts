import { expect, test } from 'vitest';
import { countWhile, lastUpTo } from '../../server/src/core/text/countWhile';
import { longestRising } from '../../server/src/core/text/longestRising';

test('how many at the beginning meet a condition, as going through them tells', () => {
  for (let length = 0; length < 20; length++) {
    for (let meet = 0; meet <= length; meet++) expect(countWhile(length, (index) => index < meet)).toBe(meet);
  }
});

test('the last start at an offset or before it, and the first where there is none', () => {
  const starts = [3, 7, 7, 20];
  expect([0, 3, 6, 7, 19, 20, 99].map((offset) => lastUpTo(starts, offset))).toEqual([0, 0, 0, 2, 2, 3, 3]);
  expect(lastUpTo([], 5)).toBe(0);
});

test('the longest row of pairs that rise in both members', () => {
  const pairs = [5, 1, 6, 2, 9, 3, 4].map((second, first) => [first, second] as const);
  expect(longestRising(pairs).map(([, second]) => second)).toEqual([1, 2, 3, 4]);
  expect(longestRising([])).toEqual([]);
});
