import { describe, expect, test } from 'vitest';
import { coolingToFit, heatingOntoCooledShaft, heatingToFit } from '../../server/src/core/standards/thermalExpansion';
import { expansionCoefficients, expansionOf } from '../../server/src/core/standards/thermalExpansionTable';

function exactly(value: number) {
  return { lowest: value, nominal: value, highest: value };
}

function within(nominal: number, tolerance: number) {
  return { lowest: nominal - tolerance, nominal, highest: nominal + tolerance };
}

/**
 * A textbook problem: an aluminium ring of 438 mm is to go over a tube of 440 mm with 0.5 mm to spare, 23 · 10⁻⁶ per
 * kelvin. The page hides its answer; by hand (2 + 0.5)/(23e-6 · 438) = 248.16 K, compared to a tenth.
 */
test('an aluminium ring over a tube of 440 mm needs 248.2 K', () => {
  const fit = { bore: exactly(438), shaft: exactly(440), clearance: 0.5, ambient: 20 };
  expect(Math.abs((heatingToFit(fit, 23e-6)?.change ?? 0) - 248.2)).toBeLessThanOrEqual(0.05);
});

/**
 * A textbook problem with tolerances: a ring of 49.950 ± 0.005 mm on a shaft of 50.000 ± 0.005 mm, 14 · 10⁻⁶ per
 * kelvin. The tightest case by hand: 0.06/(14e-6 · 49.945) = 85.81 K, compared to a tenth.
 */
test('a ring with tolerances needs 85.8 K in the tightest case', () => {
  const fit = { bore: within(49.95, 0.005), shaft: within(50, 0.005), clearance: 0, ambient: 20 };
  const heated = heatingToFit(fit, 14e-6);
  expect(heated?.interference).toBe(0.06);
  expect(Math.abs((heated?.change ?? 0) - 85.8)).toBeLessThanOrEqual(0.05);
});

/**
 * The rule for two bodies in a published guide to fitting by heat: δ + c ≤ [(t_a − t_shaft)·α_shaft + (t_hub −
 * t_a)·α_hub]·D with one diameter D for both. We take each part's own diameter, so that the two sides may differ by
 * the interference in the diameter: 0.06 in 50, 0.12 %, of the sum.
 */
test('heating and cooling together satisfy the rule for two bodies', () => {
  const fit = { bore: within(49.95, 0.005), shaft: within(50, 0.005), clearance: 0.02, ambient: 20 };
  const hub = heatingOntoCooledShaft(fit, 14e-6, 11.7e-6, -30)?.temperature ?? 0;
  const gained = (50 * 11.7e-6 + (hub - 20) * 14e-6) * 50;
  expect(Math.abs(gained / 0.08 - 1)).toBeLessThanOrEqual(0.0015);
});

/** The formula ΔT = δ/(α·d) of the same guide for the shaft, by hand: 0.03/(11.7e-6 · 50) = 51.28 K. */
test('a steel shaft of 50 mm shrinks by 0.03 mm over 51.28 K', () => {
  const fit = { bore: exactly(49.97), shaft: exactly(50), clearance: 0, ambient: 20 };
  expect(coolingToFit(fit, 11.7e-6)?.change).toBeCloseTo(51.28, 2);
});

describe('coefficients of linear expansion', () => {
  /**
   * W. D. Callister, Fundamentals of Materials Science and Engineering, table B.6: per °C and per °F, 10⁻⁶. The first
   * is exact; the second, times 1.8, may differ by its rounding, 0.05 · 1.8 = 0.09, and by that of the first, 0.05.
   */
  test.each([
    ['aluminium 2024', 22.9, 12.7],
    ['aluminium 6061', 23.6, 13.1],
    ['aluminium 7075', 23.4, 13.0],
    ['aluminium 356.0', 21.5, 11.9],
    ['steel 1020', 11.7, 6.5],
    ['steel 1040', 11.3, 6.3],
    ['steel 4140', 12.3, 6.8],
    ['steel 4340', 12.3, 6.8],
    ['stainless steel 304', 17.2, 9.6],
    ['stainless steel 316', 15.9, 8.8],
    ['grey cast iron', 11.4, 6.3],
    ['ductile iron 60-40-18', 11.2, 6.2],
    ['titanium Ti-6Al-4V', 8.6, 4.8],
    ['nickel alloy 625', 12.8, 7.1],
  ])('%s: %d per °C, %d per °F', (material, perCelsius, perFahrenheit) => {
    const found = expansionOf(material)?.perMillion ?? 0;
    expect(found).toBe(perCelsius);
    expect(Math.abs(found - 1.8 * perFahrenheit)).toBeLessThanOrEqual(0.14);
  });

  /** A published table of expansion coefficients has these two; no second source was found, and the table says so. */
  test.each([
    ['aluminium 2218', 22.3],
    ['aluminium 355.0', 22.0],
  ])('%s: %d, from one table', (material, perCelsius) => {
    expect(expansionOf(material)).toMatchObject({ perMillion: perCelsius });
    expect(expansionOf(material)?.source).toContain('no second source');
  });

  /**
   * A merchant's table of aluminium alloys, mean from 68 to 212 °F, 10⁻⁶ per °F: 2024 12.9, 6061 13.1. Over that
   * wider range metals expand a little more: 2 % is allowed.
   */
  test.each([
    ['aluminium 2024', 12.9],
    ['aluminium 6061', 13.1],
  ])('%s agrees with a second table', (material, perFahrenheit) => {
    const found = expansionOf(material)?.perMillion ?? 0;
    expect(Math.abs((1.8 * perFahrenheit) / found - 1)).toBeLessThanOrEqual(0.02);
  });

  test('there is no coefficient without a check here', () => {
    expect(expansionCoefficients).toHaveLength(16);
  });
});
