import { describe, expect, test } from 'vitest';
import { findORingSize, oRingSizes, sectionTolerance } from '../../server/src/core/standards/oRingSizes';
import {
  fillOf,
  greatestFill,
  greatestStretch,
  recommendedSqueeze,
  squeezeOf,
  stretchOf,
} from '../../server/src/core/standards/oRings';

/**
 * Inside diameter and its tolerance in millimetres of the sizes 001 to 050 (ISO 3601-1, SAE AS568), as the table of
 * O-rings of a public library of CAD parts lists them.
 */
const PRINTED: readonly (readonly [string, number, number])[] = [
  ['001', 0.74, 0.1],
  ['002', 1.07, 0.1],
  ['003', 1.42, 0.1],
  ['004', 1.78, 0.13],
  ['005', 2.57, 0.13],
  ['006', 2.9, 0.13],
  ['007', 3.68, 0.13],
  ['008', 4.47, 0.13],
  ['009', 5.28, 0.13],
  ['010', 6.07, 0.13],
  ['011', 7.65, 0.13],
  ['012', 9.25, 0.13],
  ['013', 10.82, 0.13],
  ['014', 12.42, 0.13],
  ['015', 14, 0.18],
  ['016', 15.6, 0.23],
  ['017', 17.17, 0.23],
  ['018', 18.77, 0.23],
  ['019', 20.35, 0.23],
  ['020', 21.95, 0.23],
  ['021', 23.52, 0.23],
  ['022', 25.12, 0.25],
  ['023', 26.7, 0.25],
  ['024', 28.3, 0.25],
  ['025', 29.87, 0.28],
  ['026', 31.47, 0.28],
  ['027', 33.05, 0.28],
  ['028', 34.65, 0.33],
  ['029', 37.82, 0.33],
  ['030', 41, 0.33],
  ['031', 44.17, 0.38],
  ['032', 47.35, 0.38],
  ['033', 50.52, 0.46],
  ['034', 53.7, 0.46],
  ['035', 56.87, 0.46],
  ['036', 60.05, 0.46],
  ['037', 63.22, 0.46],
  ['038', 66.4, 0.51],
  ['039', 69.57, 0.51],
  ['040', 72.75, 0.51],
  ['041', 75.92, 0.61],
  ['042', 82.27, 0.61],
  ['043', 88.62, 0.61],
  ['044', 94.97, 0.69],
  ['045', 101.32, 0.69],
  ['046', 107.67, 0.76],
  ['047', 114.02, 0.76],
  ['048', 120.37, 0.76],
  ['049', 126.72, 0.94],
  ['050', 133.07, 0.94],
];

test.each(PRINTED)('size %s: %d ± %d mm', (code, insideDiameter, insideDiameterTolerance) => {
  expect(findORingSize(code)).toMatchObject({ insideDiameter, insideDiameterTolerance });
});

test('there is no size without a check here', () => {
  expect(oRingSizes.map(({ code }) => code)).toEqual(PRINTED.map(([code]) => code));
});

describe('SAE AS568 in inches', () => {
  /**
   * Inside diameters as a published size chart prints them, in inches. Millimetres are rounded to 0.01: half of that,
   * and noise, is allowed.
   */
  test.each([
    ['001', 0.029],
    ['004', 0.07],
    ['008', 0.176],
    ['010', 0.239],
    ['012', 0.364],
    ['014', 0.489],
    ['016', 0.614],
    ['020', 0.864],
    ['024', 1.114],
    ['030', 1.614],
    ['040', 2.864],
  ])('size %s is %d in', (code, inches) => {
    expect(Math.abs((findORingSize(code)?.insideDiameter ?? 0) - 25.4 * inches)).toBeLessThanOrEqual(0.00501);
  });

  /**
   * The sizes grow by sixteenths, from 028 by eighths and from 041 by quarters of an inch; inches are rounded to
   * 0.001 (0.0127 mm) and millimetres to 0.01.
   */
  test('sizes grow by even fractions of an inch', () => {
    const inchesOf = (number: number) => {
      if (number <= 28) return 0.239 + (number - 10) / 16;
      return number <= 41 ? 1.364 + (number - 28) / 8 : 2.989 + (number - 41) / 4;
    };
    for (let number = 10; number <= 50; number++) {
      const found = findORingSize(String(number).padStart(3, '0'))?.insideDiameter ?? 0;
      expect(Math.abs(found - 25.4 * inchesOf(number)), `size ${number}`).toBeLessThanOrEqual(0.0127 + 0.005 + 0.001);
    }
  });

  /**
   * Tolerances of the inside diameter in inches, first size that has it (SAE AS568, from memory); 0.01 mm rounding as
   * above.
   */
  test('tolerances are those in inches', () => {
    const from: readonly (readonly [number, number])[] = [
      [1, 0.004],
      [4, 0.005],
      [15, 0.007],
      [16, 0.009],
      [22, 0.01],
      [25, 0.011],
      [28, 0.013],
      [31, 0.015],
      [33, 0.018],
      [38, 0.02],
      [41, 0.024],
      [44, 0.027],
      [46, 0.03],
      [49, 0.037],
    ];
    for (const { code, insideDiameterTolerance } of oRingSizes) {
      const inches = from.findLast(([first]) => Number(code) >= first)?.[1] ?? 0;
      expect(Math.abs(insideDiameterTolerance - 25.4 * inches), code).toBeLessThanOrEqual(0.00501);
    }
  });

  /**
   * Sections with tolerances of the five series as a published groove table prints them, in inches, the three small
   * ones from memory; 0.01 mm rounding.
   */
  test.each([
    [0.04, 0.003],
    [0.05, 0.003],
    [0.06, 0.003],
    [0.07, 0.003],
    [0.103, 0.003],
    [0.139, 0.004],
    [0.21, 0.005],
    [0.275, 0.006],
  ])('a section of %d in has ± %d in', (section, tolerance) => {
    const millimetres = Math.round(section * 2540) / 100;
    expect(Math.abs((sectionTolerance(millimetres) ?? 0) - 25.4 * tolerance)).toBeLessThanOrEqual(0.00501);
  });
});

/**
 * A published gland table, in millimetres and per cent: section, least and greatest depth, least and greatest
 * squeeze. It was converted from inches column by column, so that three rounded numbers meet: 0.02 mm, and one per
 * cent, are allowed. The deepest axial groove of 6.99 is printed as 5.42, which contradicts its own squeeze of 1.37
 * mm; 5.46 (0.215 in) fits it and stands here.
 */
const GLANDS: readonly (readonly [string, number, number, number, number, number, number, number])[] = [
  ['static radial', 1.02, 0.69, 0.76, 0.18, 0.41, 19, 37],
  ['static radial', 1.27, 0.89, 0.99, 0.2, 0.46, 17, 34],
  ['static radial', 1.52, 1.07, 1.19, 0.25, 0.53, 18, 33],
  ['static radial', 1.78, 1.27, 1.4, 0.3, 0.58, 18, 32],
  ['static radial', 2.62, 2.03, 2.18, 0.36, 0.66, 14, 25],
  ['static radial', 3.53, 2.79, 2.95, 0.48, 0.84, 14, 23],
  ['static radial', 5.33, 4.32, 4.47, 0.74, 1.14, 14, 21],
  ['static radial', 6.99, 5.72, 5.97, 0.86, 1.42, 13, 20],
  ['static axial', 1.02, 0.69, 0.76, 0.18, 0.41, 19, 37],
  ['static axial', 1.27, 0.86, 0.97, 0.23, 0.48, 19, 36],
  ['static axial', 1.52, 1.07, 1.17, 0.28, 0.53, 19, 33],
  ['static axial', 1.78, 1.24, 1.37, 0.33, 0.61, 19, 33],
  ['static axial', 2.62, 1.91, 2.06, 0.48, 0.79, 19, 29],
  ['static axial', 3.53, 2.54, 2.74, 0.69, 1.09, 20, 30],
  ['static axial', 5.33, 3.94, 4.19, 1.02, 1.52, 20, 28],
  ['static axial', 6.99, 5.21, 5.46, 1.37, 1.93, 20, 27],
  ['dynamic', 1.02, 0.79, 0.84, 0.1, 0.3, 11, 28],
  ['dynamic', 1.27, 0.99, 1.04, 0.15, 0.36, 13, 26],
  ['dynamic', 1.52, 1.19, 1.24, 0.2, 0.41, 14, 25],
  ['dynamic', 1.78, 1.4, 1.45, 0.25, 0.46, 15, 25],
  ['dynamic', 2.62, 2.21, 2.29, 0.25, 0.48, 10, 18],
  ['dynamic', 3.53, 3.02, 3.12, 0.3, 0.61, 9, 17],
  ['dynamic', 5.33, 4.65, 4.78, 0.43, 0.81, 8.5, 15],
  ['dynamic', 6.99, 5.94, 6.1, 0.74, 1.19, 10.5, 17],
];

test.each(GLANDS)('%s, section %d in %d to %d mm', (_, section, shallow, deep, least, greatest, from, to) => {
  const tolerance = sectionTolerance(section) ?? 0;
  const ring = { lowest: section - tolerance, nominal: section, highest: section + tolerance };
  const squeeze = squeezeOf(ring, { lowest: shallow, nominal: shallow, highest: deep });
  expect(Math.abs((squeeze?.least ?? 0) - least)).toBeLessThanOrEqual(0.0201);
  expect(Math.abs((squeeze?.greatest ?? 0) - greatest)).toBeLessThanOrEqual(0.0201);
  expect(Math.abs((squeeze?.leastPercent ?? 0) - from)).toBeLessThanOrEqual(1);
  expect(Math.abs((squeeze?.greatestPercent ?? 0) - to)).toBeLessThanOrEqual(1);
});

/**
 * By hand from the tolerances: section 1.78 ± 0.08 in 1.27 to 1.40 mm is squeezed by 0.30 to 0.59 mm, 17.6 to 31.7 %.
 */
test('section 1.78 in a static radial groove', () => {
  const ring = { lowest: 1.7, nominal: 1.78, highest: 1.86 };
  const squeeze = squeezeOf(ring, { lowest: 1.27, nominal: 1.335, highest: 1.4 });
  expect(squeeze).toMatchObject({ least: 0.3, greatest: 0.59 });
  expect(squeeze?.leastPercent).toBeCloseTo(17.6, 1);
  expect(squeeze?.greatestPercent).toBeCloseTo(31.7, 1);
});

/**
 * A seal maker's published design guide: squeeze about 10 to 40 % static and no more than 30 % dynamic; stretch up to
 * 5 % in place and 100 % while it is fitted. Published O-ring guides: the groove at most 85 % full.
 */
test('recommended bands', () => {
  expect(recommendedSqueeze.static).toEqual({ least: 10, greatest: 40 });
  expect(recommendedSqueeze.dynamic.greatest).toBe(30);
  expect(greatestStretch).toEqual({ inPlace: 5, whileFitting: 100 });
  expect(greatestFill).toBe(85);
});

/** The gland table's own groove for 1.78, 1.27 to 1.40 deep and 2.41 wide, has to keep to the fill of the guides. */
test('the published groove for 1.78 is not overfilled', () => {
  const fill = fillOf(
    { lowest: 1.7, nominal: 1.78, highest: 1.86 },
    { lowest: 1.27, nominal: 1.335, highest: 1.4 },
    { lowest: 2.41, nominal: 2.41, highest: 2.41 },
  );
  expect(fill?.least).toBeGreaterThan(65);
  // π/4 · 1.78² / (1.335 · 2.41) = 77 % for the middle of all tolerances, by hand.
  expect(((fill?.least ?? 0) + (fill?.greatest ?? 0)) / 2).toBeCloseTo(78, -1);
});

/**
 * Stretch = (groove diameter − inside diameter)/inside diameter, by hand for size 016 (15.60 mm) in a groove of 16.00
 * mm: 2.564 %.
 */
test('size 016 in a groove of 16 mm is stretched by 2.56 %', () => {
  const exactly = (value: number) => ({ lowest: value, nominal: value, highest: value });
  expect(stretchOf(exactly(findORingSize('016')?.insideDiameter ?? 0), exactly(16))?.greatest).toBeCloseTo(2.564, 3);
});
