import { expect, test } from 'vitest';
import { parseQuantity } from '../../server/src/core/quantity';
import { type StackLink, stackLink, stackUp } from '../../server/src/core/standards/stackUp';

function chain(...written: readonly (readonly [1 | -1, string])[]): readonly StackLink[] {
  return written.map(([sign, text]) => {
    const { quantity } = parseQuantity(text, 'length');
    const link = quantity && stackLink(text, sign, quantity);
    if (link === undefined) throw new Error(`${text} is no length`);
    return link;
  });
}

/**
 * A tutorial on tolerance stack-ups: parts of 2.000 ± .005, 1.500 ± .003 and .500 ± .002 in a housing of 4.020 ± .005
 * inches leave a gap of .020; worst case .005 to .035; root sum square ± .00794, .012 to .028. The last is printed to
 * a thousandth of an inch, the statistical tolerance to 0.00001 in; the worst case is exact.
 */
test('three parts in a housing, in inches', () => {
  const result = stackUp(
    chain([1, '4.020 ± 0.005 in'], [-1, '2.000 ± 0.005 in'], [-1, '1.500 ± 0.003 in'], [-1, '0.500 ± 0.002 in']),
  );
  if (result.kind !== 'bounded') throw new Error('the chain is open');
  const inches = (millimetres: number) => millimetres / 25.4;
  expect(inches(result.nominal)).toBeCloseTo(0.02, 9);
  expect(inches(result.worst.lowest)).toBeCloseTo(0.005, 9);
  expect(inches(result.worst.highest)).toBeCloseTo(0.035, 9);
  expect(Math.abs(inches(result.statistical.highest - result.middle) - 0.00794)).toBeLessThanOrEqual(0.000005);
  expect(Math.round(inches(result.statistical.lowest) * 1000)).toBe(12);
  expect(Math.round(inches(result.statistical.highest) * 1000)).toBe(28);
});

/**
 * Data of a published worked example: 40.00 ± .10 − 25.00 ± .05 − 2.00 ± .03 − 10.00 ± .05 mm. Sums by hand: 3.00,
 * worst ± 0.23, and √(0.01 + 0.0025 + 0.0009 + 0.0025) = √0.0159 = 0.126095, which is compared to its sixth place.
 */
test('a loop of four dimensions, in millimetres', () => {
  const result = stackUp(
    chain([1, '40.00 ± 0.10 mm'], [-1, '25.00 ± 0.05 mm'], [-1, '2.00 ± 0.03 mm'], [-1, '10.00 ± 0.05 mm']),
  );
  if (result.kind !== 'bounded') throw new Error('the chain is open');
  expect(result.nominal).toBe(3);
  expect(result.worst).toEqual({ lowest: 2.77, highest: 3.23 });
  expect(result.statistical.highest - 3).toBeCloseTo(0.126095, 6);
  expect(3 - result.statistical.lowest).toBeCloseTo(0.126095, 6);
});

/**
 * The same loop with one dimension in inches: 25.00 mm are 0.984252 in, so that nothing but rounding may change (1e-6
 * mm).
 */
test('a loop of mixed units adds up to the same', () => {
  const result = stackUp(
    chain([1, '40.00 ± 0.10 mm'], [-1, '0.98425197 ± 0.00196850 in'], [-1, '2.00 ± 0.03 mm'], [-1, '10.00 ± 0.05 mm']),
  );
  if (result.kind !== 'bounded') throw new Error('the chain is open');
  expect(result.nominal).toBeCloseTo(3, 6);
  expect(result.worst.lowest).toBeCloseTo(2.77, 6);
});
