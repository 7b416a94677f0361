import { describe, expect, test } from 'vitest';
import { metricThread } from '../../server/src/core/standards/metricThreads';
import {
  matchingBoltClass,
  readPropertyClass,
  type Strength,
  strengthOf,
} from '../../server/src/core/standards/propertyClasses';
import { nutProofLoad } from '../../server/src/core/standards/strengthTables';
import { stressArea } from '../../server/src/core/standards/threadGeometry';

function strength(name: string, diameter: number): Strength {
  const found = readPropertyClass(name);
  const result = found && strengthOf(found, diameter);
  if (result === undefined) throw new Error(`no ${name}`);
  return result;
}

function area(diameter: number): number {
  const thread = metricThread(diameter);
  if (thread === undefined) throw new Error(`no M${diameter}`);
  return stressArea(thread);
}

/** To three figures, as the standard prints areas. */
function threeFigures(value: number): number {
  return Number(value.toPrecision(3));
}

describe('EN ISO 898-1:2013', () => {
  /** Tensile strength, yield stress, proof stress in MPa, and proof stress over yield stress: a published copy of table 3. */
  test.each([
    ['4.6', 8, 400, 240, 225, 0.94],
    ['4.8', 8, 420, 340, 310, 0.91],
    ['5.6', 8, 500, 300, 280, 0.93],
    ['5.8', 8, 520, 420, 380, 0.9],
    ['6.8', 8, 600, 480, 440, 0.92],
    ['8.8', 16, 800, 640, 580, 0.91],
    ['8.8', 18, 830, 660, 600, 0.91],
    ['9.8', 8, 900, 720, 650, 0.9],
    ['10.9', 8, 1040, 940, 830, 0.88],
    ['12.9', 8, 1220, 1100, 970, 0.88],
  ])('%s at %s mm', (name, diameter, tensile, yieldStress, proof, ratio) => {
    const found = strength(name, diameter);
    expect(found).toMatchObject({ tensile, yield: yieldStress, proof });
    // The printed ratio is a second witness of the two figures; it is rounded to hundredths.
    expect(Math.abs(found.proof / found.yield - ratio)).toBeLessThanOrEqual(0.0051);
  });

  test.each(['4.6', '4.8', '5.6', '5.8', '6.8', '8.8', '9.8', '10.9', '12.9'])('%s: what its name says', (name) => {
    const [hundreds = 0, tenths = 0] = name.split('.').map(Number);
    const { tensile, yield: yieldStress } = strength(name, 8);
    // The name gives nominal values; the smallest permitted ones are equal or up to 5 % above.
    expect(tensile / (hundreds * 100)).toBeGreaterThanOrEqual(1);
    expect(tensile / (hundreds * 100)).toBeLessThanOrEqual(1.05);
    expect(yieldStress / (hundreds * tenths * 10)).toBeGreaterThanOrEqual(1);
    expect(yieldStress / (hundreds * tenths * 10)).toBeLessThanOrEqual(1.0625);
  });

  /** Proof loads in N of ISO 898-1 as a publication of its tables prints them; the M16 row of 12.9 is cut off there. */
  test.each([
    [3, 2920, 4180, 4880],
    [4, 5100, 7290, 8520],
    [5, 8230, 11800, 13800],
    [6, 11600, 16700, 19500],
    [8, 21200, 30400, 35500],
    [10, 33700, 48100, 56300],
    [12, 48900, 70000, 81800],
    [14, 66700, 95500, 112000],
    [16, 91000, 130000, undefined],
  ])('M%s: proof loads', (diameter, class8, class10, class12) => {
    const printed = [class8, class10, class12];
    for (const [index, name] of ['8.8', '10.9', '12.9'].entries()) {
      const load = printed[index];
      if (load === undefined) continue;
      // The standard multiplies the printed area and rounds to three figures, some rows down and some up: less than one unit.
      const product = strength(name, diameter).proof * threeFigures(area(diameter));
      const unit = 10 ** (Math.floor(Math.log10(load)) - 2);
      expect(Math.abs(product - load)).toBeLessThan(unit);
    }
  });
});

/** Nut classes and the strongest bolt for each: the table of combinations of ISO 898-2 as a publication prints it. */
test.each([
  ['5', '5.8'],
  ['6', '6.8'],
  ['8', '8.8'],
  ['9', '9.8'],
  ['10', '10.9'],
  ['12', '12.9'],
])('ISO 898-2: nut %s for bolts up to %s', (nut, bolt) => {
  const nutClass = readPropertyClass(nut);
  expect(nutClass && matchingBoltClass(nutClass)).toEqual(readPropertyClass(bolt));
});

/** Proof loads in N of nuts, DIN EN 20898-2, from an extract of it. */
test.each([
  [5, 12140, 14800],
  [6, 17200, 20900],
  [8, 31800, 38100],
  [10, 50500, 60300],
  [12, 74200, 88500],
])('nuts M%s: proof loads of classes 8 and 10', (diameter, class8, class10) => {
  expect(nutProofLoad('8', diameter)).toBe(class8);
  expect(nutProofLoad('10', diameter)).toBe(class10);
  // A nut holds what breaks the bolt it is paired with, or nearly: 1:1 with R_m·A_s of 8.8 and 10.9.
  expect(class8).toBeGreaterThan(strength('8.8', diameter).tensile * area(diameter));
  expect(class10).toBeGreaterThan(0.99 * strength('10.9', diameter).tensile * area(diameter));
});

test('no nut load is made up', () => {
  expect(nutProofLoad('8', 7)).toBeUndefined();
  expect(nutProofLoad('9', 8)).toBeUndefined();
});

/** ISO 3506-1: tensile strength and 0.2 % stress in MPa, three publications. The number of the class is a tenth of R_m. */
test.each([
  ['A2-50', 500, 210],
  ['A4-50', 500, 210],
  ['A2-70', 700, 450],
  ['A4-70', 700, 450],
  ['A4-80', 800, 600],
])('%s', (name, tensile, yieldStress) => {
  expect(strength(name, 8)).toMatchObject({ tensile, yield: yieldStress });
  expect(tensile).toBe(Number(name.slice(-2)) * 10);
});

/** SAE J429 in ksi (tensile, yield, proof) at a diameter in inches: Shigley and Mischke, Mechanical Engineering Design, 5th edition. */
test.each([
  ['grade 1', 0.5, 60, 36, 33],
  ['grade 2', 0.5, 74, 57, 55],
  ['grade 2', 1, 60, 36, 33],
  ['grade 5', 0.25, 120, 92, 85],
  ['grade 5', 1, 120, 92, 85],
  ['grade 5', 1.125, 105, 81, 74],
  ['grade 8', 0.375, 150, 130, 120],
])('%s at %s in', (name, inches, tensile, yieldStress, proof) => {
  const found = strength(name, inches * 25.4);
  // 1 ksi = 6.894 757 MPa (NIST SP 811).
  expect(found.tensile / 6.894757).toBeCloseTo(tensile, 4);
  expect(found.yield / 6.894757).toBeCloseTo(yieldStress, 4);
  expect(found.proof / 6.894757).toBeCloseTo(proof, 4);
});
