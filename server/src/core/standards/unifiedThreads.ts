import type { ThreadSize } from './threadGeometry';

/** The unified series that have one count of threads for each diameter. */
export type UnifiedSeries = 'UNC' | 'UNF' | 'UNEF';

/** A nominal size of the unified system with its threads per inch; undefined where a series leaves the size out. */
export interface UnifiedSize {
  /** As the size is written: `#10`, `1/4`, `1`. */
  readonly size: string;
  /** Basic major diameter in inches. */
  readonly inches: number;
  readonly threadsPerInch: Readonly<Record<UnifiedSeries, number | undefined>>;
}

type Row = readonly [size: string, inches: number, unc?: number | undefined, unf?: number, unef?: number];

/**
 * Size, major diameter in inches, threads per inch of UNC, UNF and UNEF (ASME B1.1). UNC and UNF of #4, #6, #8, #10 and
 * 1/4 to 1/2 are read from published tables with stress areas, #0 to #3, #5 and 5/8 from a table of ASME B18.3 screws, UNC
 * above 1/2 from one of ASME B18.2.2 nuts; the rest, UNEF among it, is from memory of ASME B1.1.
 */
const rows: readonly Row[] = [
  ['#0', 0.06, undefined, 80],
  ['#1', 0.073, 64, 72],
  ['#2', 0.086, 56, 64],
  ['#3', 0.099, 48, 56],
  ['#4', 0.112, 40, 48],
  ['#5', 0.125, 40, 44],
  ['#6', 0.138, 32, 40],
  ['#8', 0.164, 32, 36],
  ['#10', 0.19, 24, 32],
  ['#12', 0.216, 24, 28, 32],
  ['1/4', 0.25, 20, 28, 32],
  ['5/16', 0.3125, 18, 24, 32],
  ['3/8', 0.375, 16, 24, 32],
  ['7/16', 0.4375, 14, 20, 28],
  ['1/2', 0.5, 13, 20, 28],
  ['9/16', 0.5625, 12, 18, 24],
  ['5/8', 0.625, 11, 18, 24],
  ['3/4', 0.75, 10, 16, 20],
  ['7/8', 0.875, 9, 14, 20],
  ['1', 1, 8, 12, 20],
];

/** Every size of the table, the smallest first. */
export const unifiedSizes: readonly UnifiedSize[] = rows.map(([size, inches, unc, unf, unef]) => ({
  size,
  inches,
  threadsPerInch: { UNC: unc, UNF: unf, UNEF: unef },
}));

/** The size of the table with this text, for example `#10` or `1/4`. */
export function unifiedSize(size: string): UnifiedSize | undefined {
  return unifiedSizes.find((one) => one.size === size);
}

/** The size of the table with this diameter in inches, to the ten-thousandth that decimal sizes are written with. */
export function unifiedSizeOf(inches: number): UnifiedSize | undefined {
  return unifiedSizes.find((one) => Math.abs(one.inches - inches) < 0.00051);
}

/** The series that a size has this count of threads in; undefined where it is none of the three. */
export function seriesOf(size: UnifiedSize, threadsPerInch: number): UnifiedSeries | undefined {
  return (['UNC', 'UNF', 'UNEF'] as const).find((series) => size.threadsPerInch[series] === threadsPerInch);
}

/** A unified thread of the table by its size and series, in mm. */
export function unifiedThread(size: string, series: UnifiedSeries): ThreadSize | undefined {
  const found = unifiedSize(size);
  const count = found?.threadsPerInch[series];
  return found === undefined || count === undefined
    ? undefined
    : { system: 'unified', diameter: found.inches * 25.4, pitch: 25.4 / count };
}
