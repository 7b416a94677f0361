import { describe, expect, test } from 'vitest';
import { fitOfClasses, limitsOfSize, standardTolerance } from '../../server/src/core/standards/limitsAndFits';
import { readToleranceClass, readToleranceCode } from '../../server/src/core/standards/toleranceCode';

/** A size within each range that ISO 286-1 distinguishes up to 50 mm. */
const SIZES = [2, 5, 8, 12, 20, 40] as const;
/** Geometric means of the ends of those ranges, which the formulas of ISO 286-1 are evaluated at. */
const MEANS = [0, Math.sqrt(18), Math.sqrt(60), Math.sqrt(180), Math.sqrt(540), Math.sqrt(1500)] as const;

/** Lower and upper deviation of a class such as g6 in whole micrometres; a difference of 1 µm would show. */
function deviations(nominal: number, text: string): readonly [number, number] {
  const read = readToleranceClass(text);
  const limits = read && limitsOfSize(nominal, read);
  if (limits === undefined) throw new Error(`no limits for ${nominal} ${text}`);
  return [round(limits.lowerDeviation * 1000), round(limits.upperDeviation * 1000)];
}

/** The same of several sizes as the tables here write them: `0/12 0/15`. */
function row(nominals: readonly number[], text: string): string {
  return nominals.map((nominal) => deviations(nominal, text).join('/')).join(' ');
}

function round(micrometres: number): number {
  return Math.round(micrometres * 1000) / 1000 + 0;
}

/**
 * Limit deviations in micrometres at 5, 8, 12 and 20 mm as ISO 286-2 prints them; read in a public code of ISO 286 with
 * tables (its sign slip for U at 225 to 250 mm lies outside these sizes). Exact: the tables hold whole micrometres.
 */
const ISO_286_2: readonly (readonly [string, string])[] = [
  ['H6', '0/8 0/9 0/11 0/13'],
  ['H7', '0/12 0/15 0/18 0/21'],
  ['H8', '0/18 0/22 0/27 0/33'],
  ['e8', '-38/-20 -47/-25 -59/-32 -73/-40'],
  ['f7', '-22/-10 -28/-13 -34/-16 -41/-20'],
  ['g5', '-9/-4 -11/-5 -14/-6 -16/-7'],
  ['g6', '-12/-4 -14/-5 -17/-6 -20/-7'],
  ['h5', '-5/0 -6/0 -8/0 -9/0'],
  ['h6', '-8/0 -9/0 -11/0 -13/0'],
  ['h7', '-12/0 -15/0 -18/0 -21/0'],
  ['js6', '-4/4 -4.5/4.5 -5.5/5.5 -6.5/6.5'],
  ['k6', '1/9 1/10 1/12 2/15'],
  ['m6', '4/12 6/15 7/18 8/21'],
  ['n6', '8/16 10/19 12/23 15/28'],
  ['p6', '12/20 15/24 18/29 22/35'],
  ['r6', '15/23 19/28 23/34 28/41'],
  ['s6', '19/27 23/32 28/39 35/48'],
];

test.each(ISO_286_2)('%s has the limits of ISO 286-2 in every range from 3 to 30 mm', (text, printed) => {
  expect(row([5, 8, 12, 20], text)).toBe(printed);
  // The ends of the ranges: 6, 10, 18 and 30 mm still belong to the range that they end.
  expect(row([6, 10, 18, 30], text)).toBe(printed);
  expect(row([3.01, 6.01, 10.01, 18.01], text)).toBe(printed);
});

/**
 * A second table, for the ranges >3..6, >6..10, >10..18, >18..30 and >30..50 mm: a calculator of fits, its tables
 * checked by hand as its author says, and agreeing with its formulas. It also has the holes of the shaft basis.
 */
const SECOND_TABLE: readonly (readonly [string, string])[] = [
  ['H9', '0/30 0/36 0/43 0/52 0/62'],
  ['H11', '0/75 0/90 0/110 0/130 0/160'],
  ['F8', '10/28 13/35 16/43 20/53 25/64'],
  ['G7', '4/16 5/20 6/24 7/28 9/34'],
  ['JS7', '-6/6 -7.5/7.5 -9/9 -10.5/10.5 -12.5/12.5'],
  ['K7', '-9/3 -10/5 -12/6 -15/6 -18/7'],
  ['M7', '-12/0 -15/0 -18/0 -21/0 -25/0'],
  ['N7', '-16/-4 -19/-4 -23/-5 -28/-7 -33/-8'],
  ['d9', '-60/-30 -76/-40 -93/-50 -117/-65 -142/-80'],
  ['f7', '-22/-10 -28/-13 -34/-16 -41/-20 -50/-25'],
  ['g6', '-12/-4 -14/-5 -17/-6 -20/-7 -25/-9'],
  ['h6', '-8/0 -9/0 -11/0 -13/0 -16/0'],
  ['js5', '-2.5/2.5 -3/3 -4/4 -4.5/4.5 -5.5/5.5'],
  ['k5', '1/6 1/7 1/9 2/11 2/13'],
  ['k6', '1/9 1/10 1/12 2/15 2/18'],
  ['n6', '8/16 10/19 12/23 15/28 17/33'],
  ['p6', '12/20 15/24 18/29 22/35 26/42'],
  ['s6', '19/27 23/32 28/39 35/48 43/59'],
];

test.each(SECOND_TABLE)('%s agrees with a second table up to 50 mm', (text, printed) => {
  expect(row(SIZES.slice(1), text)).toBe(printed);
});

/**
 * Limits of h6 to h12 in micrometres, from the tolerance tables for round bars of a steel merchant; its h8 at 30 to
 * 50 mm lacks the sign.
 */
test.each([
  [2, [6, 10, 14, 25, 40, 60, 100]],
  [5, [8, 12, 18, 30, 48, 75, 120]],
  [8, [9, 15, 22, 36, 58, 90, 150]],
  [12, [11, 18, 27, 43, 70, 110, 180]],
  [20, [13, 21, 33, 52, 84, 130, 210]],
  [40, [16, 25, 39, 62, 100, 160, 250]],
])('h6 to h12 at %d mm agree with a table for round bars', (nominal, printed) => {
  expect([6, 7, 8, 9, 10, 11, 12].map((grade) => deviations(nominal, `h${grade}`))).toEqual(
    printed.map((micrometres) => [-micrometres, 0]),
  );
});

/** h4 and h5 in micrometres, from the table of shaft tolerances in a catalogue of tool holders. */
test('h4 and h5 agree with a catalogue', () => {
  expect(SIZES.map((nominal) => deviations(nominal, 'h4')[0])).toEqual([-3, -4, -4, -5, -6, -7]);
  expect(SIZES.map((nominal) => deviations(nominal, 'h5')[0])).toEqual([-4, -5, -6, -8, -9, -11]);
});

/**
 * Narayana, Kannaiah and Venkata Reddy, Machine Drawing, table 15.2: sizes up to 3 mm and the example P7 at 18 to 30
 * mm, ES = −14.
 */
test('sizes up to 3 mm and P7 agree with Machine Drawing', () => {
  const upper = ['d6', 'e6', 'f6', 'g6', 'h6'].map((text) => deviations(2, text)[1]);
  expect(upper).toEqual([-20, -14, -6, -2, 0]);
  const lower = ['k6', 'm6', 'n6', 'p6', 'r6', 's6'].map((text) => deviations(2, text)[0]);
  expect(lower).toEqual([0, 2, 4, 6, 10, 14]);
  expect(deviations(20, 'P7')[1]).toBe(-14);
  expect(deviations(20, 'k8')[0]).toBe(0);
});

describe('formulas of ISO 286-1 (Machine Drawing, 15.3.1 and table 15.4)', () => {
  const ranges = [1, 2, 3, 4, 5] as const;
  /** ISO 286-1 rounds by rules of its own, to a neighbouring preferred number for larger values: 1 µm, or 5 %. */
  const near = (found: number, formula: number, what: string) =>
    expect(Math.abs(found - formula), what).toBeLessThanOrEqual(Math.max(1, 0.05 * Math.abs(formula)));

  test.each([
    [5, 7],
    [6, 10],
    [7, 16],
    [8, 25],
    [9, 40],
    [10, 64],
    [11, 100],
    [12, 160],
  ])('IT%d is %d i with i = 0.45·∛D + 0.001·D', (grade, factor) => {
    for (const range of ranges) {
      const i = 0.45 * Math.cbrt(MEANS[range]) + 0.001 * MEANS[range];
      near((standardTolerance(grade, SIZES[range]) ?? 0) * 1000, factor * i, `at ${SIZES[range]} mm`);
    }
  });

  test.each<[string, (D: number) => number]>([
    ['d', (D) => -16 * D ** 0.44],
    ['e', (D) => -11 * D ** 0.41],
    ['f', (D) => -5.5 * D ** 0.41],
    ['g', (D) => -2.5 * D ** 0.34],
  ])('shaft %s ends where its formula says', (letter, formula) => {
    for (const range of ranges) near(deviations(SIZES[range], `${letter}6`)[1], formula(MEANS[range]), letter);
  });

  test.each<[string, (D: number) => number]>([
    ['k', (D) => 0.6 * Math.cbrt(D)],
    ['n', (D) => 5 * D ** 0.34],
  ])('shaft %s begins where its formula says', (letter, formula) => {
    for (const range of ranges) near(deviations(SIZES[range], `${letter}6`)[0], formula(MEANS[range]), letter);
  });

  test('m, p, r and s follow from the tolerances', () => {
    for (const nominal of SIZES.slice(1)) {
      const it = (grade: number) => Math.round((standardTolerance(grade, nominal) ?? 0) * 1000);
      const [m, p, r, s] = ['m6', 'p6', 'r6', 's6'].map((text) => deviations(nominal, text)[0]) as number[];
      expect(m).toBe(it(7) - it(6));
      expect((p ?? 0) - it(7)).toBeGreaterThanOrEqual(0);
      expect((p ?? 0) - it(7)).toBeLessThanOrEqual(5);
      expect((s ?? 0) - it(8)).toBeGreaterThanOrEqual(1);
      expect((s ?? 0) - it(8)).toBeLessThanOrEqual(4);
      near(r ?? 0, Math.sqrt((p ?? 0) * (s ?? 0)), `r at ${nominal} mm`);
    }
  });
});

/**
 * Worked fits. 50 H7/g6 and 50 H7/p6: a tutorial on ISO 286 with examples at 50 mm; 29 H7/h8: the page of a public
 * code of ISO 286; 10 H7/h6: limits of 10 H7 and 10 h6 on a page of tolerance tables. Clearance in micrometres,
 * exact.
 */
test.each([
  ['50 H7/g6', 9, 50, 'clearance'],
  ['50 H7/p6', -42, -1, 'interference'],
  ['29 H7/h8', 0, 54, 'clearance'],
  ['10 H7/h6', 0, 24, 'clearance'],
])('%s has from %d to %d µm', (text, least, greatest, kind) => {
  const code = readToleranceCode(text);
  if (code?.kind !== 'fit' || code.nominal === undefined) throw new Error(`${text} is not read as a fit`);
  const fit = fitOfClasses(code.nominal, code.hole, code.shaft);
  expect(fit).toMatchObject({ leastClearance: least / 1000, greatestClearance: greatest / 1000, kind });
});

test('50 H7 is 50.000 to 50.025 and 50 g6 49.975 to 49.991 mm in the same tutorial', () => {
  expect(limitsOfSize(50, { of: 'hole', letter: 'H', grade: 7 })).toMatchObject({ smallest: 50, largest: 50.025 });
  expect(limitsOfSize(50, { of: 'shaft', letter: 'g', grade: 6 })).toMatchObject({ smallest: 49.975, largest: 49.991 });
});
