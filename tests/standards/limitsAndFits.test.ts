import { describe, expect, test } from 'vitest';
import {
  fitOfClasses,
  fitOfSizes,
  limitsOfSize,
  standardTolerance,
} from '../../server/src/core/standards/limitsAndFits';
import {
  readToleranceClass,
  readToleranceCode,
  writeToleranceClass,
} from '../../server/src/core/standards/toleranceCode';

const H7 = { of: 'hole', letter: 'H', grade: 7 } as const;
const p6 = { of: 'shaft', letter: 'p', grade: 6 } as const;

describe('a tolerance code', () => {
  test.each([
    ['H7', { kind: 'class', nominal: undefined, toleranceClass: H7 }],
    ['25 H7', { kind: 'class', nominal: 25, toleranceClass: H7 }],
    ['⌀25H7', { kind: 'class', nominal: 25, toleranceClass: H7 }],
    ['H7/p6', { kind: 'fit', nominal: undefined, hole: H7, shaft: p6 }],
    ['25 H7/p6', { kind: 'fit', nominal: 25, hole: H7, shaft: p6 }],
    ['12.5 mm H7-p6', { kind: 'fit', nominal: 12.5, hole: H7, shaft: p6 }],
  ])('%s is read', (text, expected) => {
    expect(readToleranceCode(text)).toEqual(expected);
  });

  test.each(['', '25', 'H', '7H', 'Hp7', 'p6/H7', 'H7/H6', 'p6/g6', '25 H7/p6 x', 'H7//p6', '25,5 H7'])(
    '%j is none',
    (text) => expect(readToleranceCode(text)).toBeUndefined(),
  );

  test.each(['H7', 'js6', 'JS7', 'h12'])('%s is written as it was read', (text) => {
    const read = readToleranceClass(text);
    expect(read && writeToleranceClass(read)).toBe(text);
  });
});

describe('limits of size', () => {
  test('a size at the end of a range belongs to that range', () => {
    expect(standardTolerance(7, 18)).toBe(0.018);
    expect(standardTolerance(7, 18.001)).toBe(0.021);
  });

  test('shafts and holes of a grade are as wide as the standard tolerance', () => {
    for (const letter of ['d', 'e', 'f', 'g', 'h', 'js', 'k', 'm', 'n', 'p', 'r', 's']) {
      for (const [of, written] of [
        ['shaft', letter],
        ['hole', letter.toUpperCase()],
      ] as const) {
        const limits = limitsOfSize(20, { of, letter: written, grade: 6 });
        expect((limits?.upperDeviation ?? 0) - (limits?.lowerDeviation ?? 0), written).toBeCloseTo(0.013, 9);
      }
    }
  });

  test('the working ends in the limits', () => {
    const steps = limitsOfSize(10, p6)?.steps ?? [];
    expect(steps.map(({ symbol, value, unit }) => `${symbol} ${value} ${unit}`)).toEqual([
      'D 10 mm',
      'IT 9 µm',
      'ei 15 µm',
      'es 24 µm',
      'd_min 10.015 mm',
      'd_max 10.024 mm',
    ]);
  });

  test.each<[string, number, 'hole' | 'shaft', string, number]>([
    ['above the table', 50.1, 'hole', 'H', 7],
    ['no size', 0, 'hole', 'H', 7],
    ['no number', Number.NaN, 'hole', 'H', 7],
    ['a grade that is not held', 20, 'hole', 'H', 13],
    ['a letter that is not held', 20, 'shaft', 'zc', 7],
    ['a coarse hole of the shaft basis', 20, 'hole', 'P', 8],
    ['a small hole of the shaft basis', 3, 'hole', 'P', 7],
    ['a hole that needs a grade below the table', 20, 'hole', 'P', 4],
  ])('%s gives nothing', (_, nominal, of, letter, grade) => {
    expect(limitsOfSize(nominal, { of, letter, grade })).toBeUndefined();
  });
});

describe('a fit', () => {
  test.each([
    ['g6', 'clearance'],
    ['h6', 'clearance'],
    ['k6', 'transition'],
    ['s6', 'interference'],
  ])('H7/%s at 20 mm is one of %s', (shaft, kind) => {
    const read = readToleranceClass(shaft);
    expect(read && fitOfClasses(20, H7, read)?.kind).toBe(kind);
  });

  test('that can just come down to nothing keeps its kind', () => {
    // Over 10 to 18 mm both H7 ends and p6 begins at +18 µm.
    expect(fitOfClasses(12, H7, p6)).toMatchObject({ kind: 'interference', greatestClearance: 0 });
    expect(fitOfSizes({ smallest: 5, largest: 5.01 }, { smallest: 4.99, largest: 5 })).toMatchObject({
      kind: 'clearance',
      leastClearance: 0,
    });
  });

  test('shows the limits of both before the clearance', () => {
    const symbols = fitOfClasses(20, H7, p6)?.steps.map(({ symbol }) => symbol);
    expect(symbols?.join(' ')).toBe('D IT EI ES D_min D_max IT ei es d_min d_max c_min c_max');
  });

  test('needs a hole and a shaft', () => {
    expect(fitOfClasses(20, H7, H7)).toBeUndefined();
    expect(fitOfClasses(20, p6, p6)).toBeUndefined();
    expect(fitOfClasses(200, H7, p6)).toBeUndefined();
  });
});
