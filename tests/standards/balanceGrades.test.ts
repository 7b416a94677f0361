import { describe, expect, test } from 'vitest';
import {
  balanceGrades,
  gradeExamples,
  gradeReached,
  permissibleUnbalance,
  readBalanceGrade,
  splitBetweenPlanes,
} from '../../server/src/core/standards/balanceGrades';

test.each([
  ['G 6.3', 6.3],
  ['G6.3', 6.3],
  ['2.5', 2.5],
  [' G 1 ', 1],
])('%j is a grade', (text, grade) => expect(readBalanceGrade(text)).toBe(grade));

test.each(['', 'G', 'G 6', 'G 6,3', '6.3 mm/s', 'Q 6.3', 'G -1'])('%j is none', (text) => {
  expect(readBalanceGrade(text)).toBeUndefined();
});

test('what is said of a grade is said of one that exists', () => {
  for (const grade of gradeExamples.keys()) expect(balanceGrades).toContain(grade);
});

describe('permissible unbalance', () => {
  test('halves at twice the speed and doubles at twice the mass', () => {
    const base = permissibleUnbalance(2.5, 0.25, 100_000)?.unbalance ?? 0;
    expect(permissibleUnbalance(2.5, 0.25, 200_000)?.unbalance).toBeCloseTo(base / 2, 12);
    expect(permissibleUnbalance(2.5, 0.5, 100_000)?.unbalance).toBeCloseTo(base * 2, 12);
  });

  test('shows how it was reached', () => {
    const steps = permissibleUnbalance(6.3, 0.3, 120_000)?.steps ?? [];
    expect(steps.map(({ symbol, formula }) => `${symbol}: ${formula}`)).toEqual([
      'G: ISO 21940-11:2016',
      'm: given',
      'n: given',
      'Ω: 2π·n/60',
      'e: 1000·G/Ω',
      'U: e·m',
    ]);
  });

  test.each([
    [0, 1, 1000],
    [6.3, 0, 1000],
    [6.3, 1, 0],
    [6.3, -1, 1000],
    [6.3, 1, Number.POSITIVE_INFINITY],
    [Number.NaN, 1, 1000],
  ])('G %d, %d kg and %d per minute give nothing', (grade, mass, speed) => {
    expect(permissibleUnbalance(grade, mass, speed)).toBeUndefined();
  });

  test('leads back to its grade', () => {
    const unbalance = permissibleUnbalance(6.3, 0.42, 95_000)?.unbalance ?? 0;
    expect(gradeReached(unbalance, 0.42, 95_000)).toBeCloseTo(6.3, 9);
    expect(gradeReached(0, 0.42, 95_000)).toBe(0);
    expect(gradeReached(-1, 0.42, 95_000)).toBeUndefined();
  });
});

describe('two planes', () => {
  test('the nearer one gets more, and nothing is lost', () => {
    const split = splitBetweenPlanes(10, 40, 60);
    expect(split?.planeA).toBeCloseTo(6, 12);
    expect(split?.planeB).toBeCloseTo(4, 12);
  });

  test('none gets less than 30 %', () => {
    const split = splitBetweenPlanes(10, 1, 99);
    expect(split?.planeA).toBeCloseTo(7, 12);
    expect(split?.planeB).toBeCloseTo(3, 12);
  });

  test('the centre of mass has to lie between them', () => {
    expect(splitBetweenPlanes(10, -5, 105)).toBeUndefined();
    expect(splitBetweenPlanes(10, 0, 100)).toBeUndefined();
  });
});
