import { describe, expect, test } from 'vitest';
import {
  clearanceWhenHot,
  coolingToFit,
  heatingOntoCooledShaft,
  heatingToFit,
  type ShrinkFit,
} from '../../server/src/core/standards/thermalExpansion';
import { expansionCoefficients, expansionOf } from '../../server/src/core/standards/thermalExpansionTable';

/** A wheel of an aluminium alloy on a steel shaft: 6 to 18 µm of interference. */
const wheel: ShrinkFit = {
  bore: { lowest: 7.99, nominal: 7.996, highest: 8.002 },
  shaft: { lowest: 8.008, nominal: 8.008, highest: 8.008 },
  clearance: 0.01,
  ambient: 20,
};

const alpha = 23e-6;

describe('heating the outer part', () => {
  test('reckons with the smallest bore and the largest shaft', () => {
    const heated = heatingToFit(wheel, alpha);
    expect(heated?.interference).toBe(0.018);
    expect(heated?.change).toBeCloseTo(0.028 / (23e-6 * 7.99), 9);
    expect(heated?.temperature).toBeCloseTo(20 + 0.028 / (23e-6 * 7.99), 9);
  });

  test('leaves exactly the clearance that was wanted', () => {
    const temperature = heatingToFit(wheel, alpha)?.temperature ?? 0;
    expect(clearanceWhenHot(wheel, alpha, temperature)).toBeCloseTo(0.01, 9);
    expect(clearanceWhenHot(wheel, alpha, 20)).toBe(-0.018);
  });

  test('is not needed where the parts slide cold', () => {
    const loose = { ...wheel, shaft: { lowest: 7.97, nominal: 7.97, highest: 7.975 } };
    expect(heatingToFit(loose, alpha)).toMatchObject({ change: 0, temperature: 20, interference: -0.015 });
  });

  test('shows how it was reached', () => {
    expect(heatingToFit(wheel, alpha)?.steps.map(({ symbol, formula }) => `${symbol} = ${formula}`)).toEqual([
      'd = given',
      'd_s = given',
      'δ = d_s − d',
      'c = given',
      't_a = given',
      'α = given',
      'ΔT = (δ + c)/(α·d)',
      't = t_a + ΔT',
    ]);
  });

  test.each<[string, ShrinkFit, number]>([
    ['an open bore', { ...wheel, bore: { lowest: Number.NEGATIVE_INFINITY, nominal: 8, highest: 8 } }, alpha],
    ['an open shaft', { ...wheel, shaft: { lowest: 8, nominal: 8, highest: Number.POSITIVE_INFINITY } }, alpha],
    ['a clearance below zero', { ...wheel, clearance: -0.01 }, alpha],
    ['no surroundings', { ...wheel, ambient: Number.NaN }, alpha],
    ['no expansion', wheel, 0],
  ])('with %s gives nothing', (_, fit, expansion) => {
    expect(heatingToFit(fit, expansion)).toBeUndefined();
    expect(coolingToFit(fit, expansion)).toBeUndefined();
    expect(heatingOntoCooledShaft(fit, expansion, expansion, -40)).toBeUndefined();
    expect(clearanceWhenHot(fit, expansion, 100)).toBeUndefined();
  });
});

describe('cooling the shaft', () => {
  test('goes below the surroundings', () => {
    const cooled = coolingToFit({ ...wheel, clearance: 0 }, 12e-6);
    expect(cooled?.change).toBeCloseTo(0.018 / (12e-6 * 8.008), 9);
    expect(cooled?.temperature).toBeCloseTo(20 - 0.018 / (12e-6 * 8.008), 9);
  });

  test('cannot go below absolute zero', () => {
    expect(coolingToFit(wheel, 12e-6)).not.toBeUndefined();
    expect(coolingToFit({ ...wheel, clearance: 0.05 }, 12e-6)).toBeUndefined();
  });
});

describe('heating onto a cooled shaft', () => {
  test('needs less heat, by what the shaft has shrunk', () => {
    const both = heatingOntoCooledShaft(wheel, alpha, 12e-6, -80);
    const shrinks = 12e-6 * 8.008 * 100;
    expect(both?.change).toBeCloseTo((0.028 - shrinks) / (23e-6 * 7.99), 6);
    expect(both?.steps[3]?.value).toBeCloseTo(shrinks, 12);
  });

  test('is the same as heating alone where the shaft is not cooled', () => {
    expect(heatingOntoCooledShaft(wheel, alpha, 12e-6, 20)?.change).toBe(heatingToFit(wheel, alpha)?.change);
  });

  test('wants a shaft that is not warmer than the surroundings, nor colder than anything can be', () => {
    expect(heatingOntoCooledShaft(wheel, alpha, 12e-6, 21)).toBeUndefined();
    expect(heatingOntoCooledShaft(wheel, alpha, 12e-6, -300)).toBeUndefined();
  });
});

describe('a coefficient', () => {
  test.each([
    ['aluminium 2024', 'aluminium 2024'],
    ['Aluminum 2024', 'aluminium 2024'],
    ['EN AW-2024', 'aluminium 2024'],
    ['Al 356', 'aluminium 356.0'],
    ['Ti-6Al-4V', 'titanium Ti-6Al-4V'],
    ['gray iron', 'grey cast iron'],
    ['steel 4140', 'steel 4140'],
  ])('%s is that of %s', (written, material) => expect(expansionOf(written)?.material).toBe(material));

  test.each(['', 'aluminium', '2024', 'steel', 'cast nickel alloy', 'aluminium 2024 or 7075'])(
    '%j has none',
    (written) => expect(expansionOf(written)).toBeUndefined(),
  );

  test('each has its source, and is found by its own name', () => {
    for (const coefficient of expansionCoefficients) {
      expect(coefficient.source).not.toBe('');
      expect(expansionOf(coefficient.material)).toBe(coefficient);
    }
  });
});
