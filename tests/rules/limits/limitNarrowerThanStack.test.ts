import { expect, test } from 'vitest';
import { reported } from '../../support/checkText';
import { stacked } from './stackRules';

const RULE = 'limit-narrower-than-stack';
const DIMENSIONS = ['bore: 8.024..8.030 mm', 'journal: 7.988..7.996 mm'];
const limit = (accept: string) => `{ name: journal clearance, accept: ${accept}, from: [+bore, -journal] }`;

test('a limit that the root sum square leaves is told', async () => {
  expect(await reported(stacked(DIMENSIONS, limit('0.031..0.039 mm')), RULE)).toEqual([
    '0.031..0.039 mm: The journal clearance comes to 0.03 to 0.04 mm from its dimensions by root sum square (worst case 0.028 to 0.042 mm), and only 0.031..0.039 mm is accepted; parts that are to drawing will fail, so say how they are matched, or widen the limit',
  ]);
});

test('a limit that only the worst case leaves is for the bench to measure', async () => {
  expect(await reported(stacked(DIMENSIONS, limit('0.030..0.040 mm')), RULE)).toEqual([]);
});

test('a limit that is wider, or that the middle misses, is not this matter', async () => {
  expect(await reported(stacked(DIMENSIONS, limit('0.01..0.09 mm')), RULE)).toEqual([]);
  expect(await reported(stacked(DIMENSIONS, limit('0.05..0.09 mm')), RULE)).toEqual([]);
});
