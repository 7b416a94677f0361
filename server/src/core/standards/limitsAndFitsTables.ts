/**
 * Tables of ISO 286-1:2010 for nominal sizes up to and including 50 mm, in micrometres. A column stands for a range of
 * nominal sizes: up to 3, over 3 to 6, over 6 to 10, over 10 to 18, over 18 to 30, and over 30 to 50 mm.
 *
 * Numbers as printed in Narayana, Kannaiah and Venkata Reddy, Machine Drawing, tables 15.1 and 15.2.
 */
export type SizeColumn = 0 | 1 | 2 | 3 | 4 | 5;

/** A table row: one number for each column. */
export type SizeRow = readonly [number, number, number, number, number, number];

/** The column of a nominal size in millimetres; none above 50 mm. */
export function columnOf(nominal: number): SizeColumn | undefined {
  if (!(nominal > 0 && nominal <= 50)) return undefined;
  if (nominal <= 3) return 0;
  if (nominal <= 6) return 1;
  if (nominal <= 10) return 2;
  if (nominal <= 18) return 3;
  return nominal <= 30 ? 4 : 5;
}

/** Standard tolerances by grade: IT4 to IT12 (ISO 286-1:2010, table 1). */
export const standardTolerances: ReadonlyMap<number, SizeRow> = new Map([
  [4, [3, 4, 4, 5, 6, 7]],
  [5, [4, 5, 6, 8, 9, 11]],
  [6, [6, 8, 9, 11, 13, 16]],
  [7, [10, 12, 15, 18, 21, 25]],
  [8, [14, 18, 22, 27, 33, 39]],
  [9, [25, 30, 36, 43, 52, 62]],
  [10, [40, 48, 58, 70, 84, 100]],
  [11, [60, 75, 90, 110, 130, 160]],
  [12, [100, 120, 150, 180, 210, 250]],
]);

/** Upper deviations es of shafts d to h, the same for every grade (ISO 286-1:2010, table 4). */
export const upperDeviations: ReadonlyMap<string, SizeRow> = new Map([
  ['d', [-20, -30, -40, -50, -65, -80]],
  ['e', [-14, -20, -25, -32, -40, -50]],
  ['f', [-6, -10, -13, -16, -20, -25]],
  ['g', [-2, -4, -5, -6, -7, -9]],
  ['h', [0, 0, 0, 0, 0, 0]],
]);

/**
 * Lower deviations ei of shafts k to s (ISO 286-1:2010, table 5); k is so for grades 4 to 7, and 0 for coarser ones.
 */
export const lowerDeviations: ReadonlyMap<string, SizeRow> = new Map([
  ['k', [0, 1, 1, 1, 2, 2]],
  ['m', [2, 4, 6, 7, 8, 9]],
  ['n', [4, 8, 10, 12, 15, 17]],
  ['p', [6, 12, 15, 18, 22, 26]],
  ['r', [10, 15, 19, 23, 28, 34]],
  ['s', [14, 19, 23, 28, 35, 43]],
]);
