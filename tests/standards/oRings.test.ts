import { describe, expect, test } from 'vitest';
import { findORingSize, oRingSizes, sectionTolerance } from '../../server/src/core/standards/oRingSizes';
import { fillOf, recommendedSqueeze, squeezeOf, stretchOf } from '../../server/src/core/standards/oRings';

function between(lowest: number, highest: number) {
  return { lowest, nominal: (lowest + highest) / 2, highest };
}

describe('squeeze', () => {
  test('is least for a thin ring in a deep groove', () => {
    const squeeze = squeezeOf(between(1.7, 1.86), between(1.27, 1.4));
    expect(squeeze?.least).toBe(0.3);
    expect(squeeze?.greatest).toBe(0.59);
    expect(squeeze?.leastPercent).toBeCloseTo(30 / 1.7, 9);
    expect(squeeze?.greatestPercent).toBeCloseTo(59 / 1.86, 9);
  });

  test('is negative where ring and face do not touch', () => {
    expect(squeezeOf(between(1.7, 1.8), between(1.85, 1.9))?.greatest).toBe(-0.05);
  });

  test('shows how it was reached', () => {
    const steps = squeezeOf(between(1.7, 1.86), between(1.27, 1.4))?.steps ?? [];
    expect(steps.slice(4).map(({ symbol, formula, unit }) => `${symbol} = ${formula} in ${unit}`)).toEqual([
      's_min = w_min − h_max in mm',
      'S_min = s_min/w_min in %',
      's_max = w_max − h_min in mm',
      'S_max = s_max/w_max in %',
    ]);
  });

  test.each([
    ['an open depth', between(1.7, 1.8), between(1, Number.POSITIVE_INFINITY)],
    ['no section', between(0, 1.8), between(1, 1.2)],
    ['no number', between(Number.NaN, 1.8), between(1, 1.2)],
  ])('with %s there is none', (_, section, depth) => {
    expect(squeezeOf(section, depth)).toBeUndefined();
    expect(fillOf(section, depth, between(2.4, 2.6))).toBeUndefined();
    expect(stretchOf(depth, section)).toBeUndefined();
  });

  test('a moving joint may be squeezed less than one that rests', () => {
    expect(recommendedSqueeze.dynamic.greatest).toBeLessThan(recommendedSqueeze.static.greatest);
  });
});

test('stretch is greatest for a small ring on a large groove', () => {
  const stretch = stretchOf(between(19.8, 20.2), between(20.4, 20.6));
  expect(stretch?.least).toBeCloseTo((100 * 0.2) / 20.2, 9);
  expect(stretch?.greatest).toBeCloseTo((100 * 0.8) / 19.8, 9);
  expect(stretchOf(between(21, 21.2), between(20.4, 20.6))?.greatest).toBeLessThan(0);
});

test('fill compares the round section with the rectangular groove', () => {
  const fill = fillOf(between(2, 2), between(1.5, 1.5), between(2.5, 2.5));
  expect(fill?.least).toBeCloseTo((100 * Math.PI) / 3.75, 9);
  expect(fill?.greatest).toBe(fill?.least);
});

describe('sizes', () => {
  test.each(['014', '-014', ' −014 '])('%j is found', (code) => {
    expect(findORingSize(code)).toMatchObject({ code: '014', insideDiameter: 12.42, section: 1.78 });
  });

  test.each(['', '14', '051', '000', 'AS568-014', '014x'])('%j is not', (code) => {
    expect(findORingSize(code)).toBeUndefined();
  });

  test('grow with their number', () => {
    for (const [index, size] of oRingSizes.entries()) {
      expect(size.insideDiameter).toBeGreaterThan(oRingSizes[index - 1]?.insideDiameter ?? 0);
    }
  });

  test('have a section whose tolerance is known, and other sections have none', () => {
    for (const size of oRingSizes) expect(sectionTolerance(size.section)).toBe(size.sectionTolerance);
    expect(sectionTolerance(2.6)).toBeUndefined();
    expect(sectionTolerance(2)).toBeUndefined();
    expect(sectionTolerance(0.07 * 25.4)).toBe(0.08);
  });
});
