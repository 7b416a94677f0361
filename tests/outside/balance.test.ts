import { describe, expect, test } from 'vitest';
import { findUnit, toBase } from '../../server/src/core/quantity';
import {
  balanceGrades,
  gradeExamples,
  permissibleUnbalance,
  splitBetweenPlanes,
} from '../../server/src/core/standards/balanceGrades';

/**
 * The grades of ISO 21940-11:2016, table 1, as a secondary copy of the table lists them; 2.5 times apart, rounded
 * (within 5 %).
 */
test('grades stand about 2.5 apart', () => {
  expect(balanceGrades).toEqual([0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000]);
  for (const [index, grade] of balanceGrades.entries()) {
    expect(Math.abs(grade / (0.4 * 2.5 ** index) - 1)).toBeLessThan(0.05);
  }
});

/** The same copy names these machines beside these grades. */
test('turbochargers stand at G 6.3, gas turbines at G 2.5', () => {
  expect(gradeExamples.get(6.3)).toContain('turbochargers');
  expect(gradeExamples.get(2.5)).toContain('gas and steam turbines');
  expect(gradeExamples.get(1)).toContain('grinding machines');
  expect(gradeExamples.get(0.4)).toContain('gyroscopes');
});

/**
 * A balancing handbook's worked example of ISO 21940-11: 2 kg, 10 000 per minute, G 6.3 give 12 g·mm, printed to
 * whole g·mm.
 */
test('2 kg at 10 000 per minute and G 6.3 may keep 12 g·mm', () => {
  const unbalance = permissibleUnbalance(6.3, 2, 10_000)?.unbalance ?? 0;
  expect(Math.round(unbalance)).toBe(12);
  // The same by the short form of ISO 21940-11, U = 9549·G·m/n, whose factor is printed to four digits.
  expect(unbalance).toBeCloseTo((9549 * 6.3 * 2) / 10_000, 3);
});

/** The formula of ISO 21940-11 evaluated by hand with nine digits: 9549.29659·G·m/n. */
test.each([
  [6.3, 0.25, 120_000, 0.125334518],
  [2.5, 0.25, 120_000, 0.0497359197],
])('G %d, %d kg, %d per minute', (grade, mass, speed, expected) => {
  expect(permissibleUnbalance(grade, mass, speed)?.unbalance).toBeCloseTo(expected, 8);
});

/**
 * In inches and pounds balancing literature writes U = 6.015·G·W/n, in ounce inches with W in pounds. The factor is
 * printed to four digits: half a unit of the last one is 0.0005.
 */
test('the factor in ounce inches and pounds is 6.015', () => {
  const [ounceInch, pound] = [findUnit('unbalance', 'oz·in'), findUnit('mass', 'lb')];
  if (ounceInch === undefined || pound === undefined) throw new Error('units are missing');
  const unbalance = permissibleUnbalance(1, toBase(1, pound), 1)?.unbalance ?? 0;
  expect(Math.abs(unbalance / ounceInch.factor - 6.015)).toBeLessThanOrEqual(0.0005);
});

describe('the share of each plane', () => {
  /**
   * Published explanations of ISO 21940-11: half each where the centre of mass is in the middle, otherwise by the
   * lever rule, 30 to 70 %.
   */
  test.each([
    [50, 50, 0.5],
    [35, 65, 0.65],
    [10, 90, 0.7],
    [90, 10, 0.3],
  ])('%d and %d mm from the centre of mass', (toA, toB, share) => {
    const split = splitBetweenPlanes(12, toA, toB);
    expect(split?.planeA).toBeCloseTo(12 * share, 9);
    expect((split?.planeA ?? 0) + (split?.planeB ?? 0)).toBeCloseTo(12, 9);
  });
});
