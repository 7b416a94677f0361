/** A metric hexagon; lengths in mm. */
export interface MetricHexRow {
  readonly diameter: number;
  readonly width: number;
  readonly standard: string;
  readonly age: 'current' | 'older';
}

/**
 * Nominal diameter and width across flats in mm of hexagon heads and nuts: ISO 4014, ISO 4017, ISO 4032, ISO 4035. Two sets of fastener
 * tables were compared; where they differ (M14: 22 in one, 21 in the other), 21 is that of ISO 4014, from memory.
 */
const isoWidths: readonly (readonly [number, number])[] = [
  [1.6, 3.2],
  [2, 4],
  [2.5, 5],
  [3, 5.5],
  [3.5, 6],
  [4, 7],
  [5, 8],
  [6, 10],
  [8, 13],
  [10, 16],
  [12, 18],
  [14, 21],
  [16, 24],
  [18, 27],
  [20, 30],
  [22, 34],
  [24, 36],
  [27, 41],
  [30, 46],
];

/** The widths in which the withdrawn DIN 931, DIN 933 and DIN 934 differ from ISO. */
const dinWidths: readonly (readonly [number, number])[] = [
  [10, 17],
  [12, 19],
  [14, 22],
  [22, 32],
];

/** Flange nuts, ISO 4161, as two sets of fastener tables print them; heads with a flange differ too much to be listed. */
const flangeNutWidths: readonly (readonly [number, number])[] = [
  [5, 8],
  [6, 10],
  [8, 13],
  [10, 15],
  [12, 18],
  [14, 21],
  [16, 24],
];

function metricRows(
  widths: readonly (readonly [number, number])[],
  standard: string,
  age: MetricHexRow['age'],
): readonly MetricHexRow[] {
  return widths.map(([diameter, width]) => ({ diameter, width, standard, age }));
}

/** Every metric hexagon, the usual width of a diameter first. */
export const metricHexRows: readonly MetricHexRow[] = [
  ...metricRows(isoWidths, 'ISO 4014, ISO 4017, ISO 4032', 'current'),
  ...metricRows(flangeNutWidths, 'ISO 4161', 'current'),
  ...metricRows(dinWidths, 'DIN 931, DIN 933, DIN 934', 'older'),
];

/** Hexagon sockets of cylindrical heads by nominal diameter, ISO 4762, as fastener tables print them; mm. */
export const hexSocketRows: ReadonlyMap<number, number> = new Map([
  [1.6, 1.5],
  [2, 1.5],
  [2.5, 2],
  [3, 2.5],
  [4, 3],
  [5, 4],
  [6, 5],
  [8, 6],
  [10, 8],
  [12, 10],
  [14, 12],
  [16, 14],
  [20, 17],
  [24, 19],
  [30, 22],
]);

/** A hexalobular socket of ISO 10664: its number and the outer diameter A in mm. */
export interface HexalobularSize {
  readonly name: string;
  readonly outer: number;
}

/** Sizes of ISO 10664 with A in mm, as two sets of tables print them (one as radius, which is half of A). There is no T9 and no T27. */
export const hexalobularSizes: readonly HexalobularSize[] = [
  { name: 'T6', outer: 1.75 },
  { name: 'T8', outer: 2.4 },
  { name: 'T10', outer: 2.8 },
  { name: 'T15', outer: 3.35 },
  { name: 'T20', outer: 3.95 },
  { name: 'T25', outer: 4.5 },
  { name: 'T30', outer: 5.6 },
  { name: 'T40', outer: 6.75 },
  { name: 'T45', outer: 7.93 },
  { name: 'T50', outer: 8.95 },
  { name: 'T55', outer: 11.35 },
  { name: 'T60', outer: 13.45 },
  { name: 'T70', outer: 15.7 },
  { name: 'T80', outer: 17.75 },
  { name: 'T90', outer: 20.2 },
  { name: 'T100', outer: 22.4 },
];

/** The size with this name, `T30`; a blank or a missing T is no matter. */
export function hexalobularSize(name: string): HexalobularSize | undefined {
  const number = /^\s*T?X?\s*(\d+)\s*$/i.exec(name)?.[1];
  return hexalobularSizes.find((size) => size.name === `T${number}`);
}

/** Hexalobular sockets of cylindrical heads by nominal diameter in mm, ISO 14579, as a published chart of wrench sizes prints them. */
export const hexalobularRows: ReadonlyMap<number, string> = new Map([
  [2, 'T6'],
  [2.5, 'T8'],
  [3, 'T10'],
  [3.5, 'T15'],
  [4, 'T20'],
  [5, 'T25'],
  [6, 'T30'],
  [8, 'T45'],
  [10, 'T50'],
  [12, 'T55'],
  [14, 'T60'],
  [16, 'T70'],
  [18, 'T80'],
  [20, 'T90'],
]);

/** An inch hexagon: size of the thread and width across flats in inches. */
export interface InchHexRow {
  readonly size: string;
  readonly width: string;
  readonly standard: string;
}

function inchRows(standard: string, rows: readonly (readonly [string, string])[]): readonly InchHexRow[] {
  return rows.map(([size, width]) => ({ size, width, standard }));
}

/**
 * Hexagons of inch fasteners, in inches: cap screws ASME B18.2.1 (three publications agree), nuts ASME B18.2.2 (fastener tables, there
 * the smallest width in mm), machine screws and their nuts ASME B18.6.3 (two publications each).
 */
export const inchHexRows: readonly InchHexRow[] = [
  ...inchRows('ASME B18.2.1', [
    ['1/4', '7/16'],
    ['5/16', '1/2'],
    ['3/8', '9/16'],
    ['7/16', '5/8'],
    ['1/2', '3/4'],
    ['9/16', '13/16'],
    ['5/8', '15/16'],
    ['3/4', '1-1/8'],
    ['7/8', '1-5/16'],
    ['1', '1-1/2'],
  ]),
  ...inchRows('ASME B18.2.2', [
    ['1/4', '7/16'],
    ['5/16', '1/2'],
    ['3/8', '9/16'],
    ['7/16', '11/16'],
    ['1/2', '3/4'],
    ['9/16', '7/8'],
    ['5/8', '15/16'],
    ['3/4', '1-1/8'],
    ['7/8', '1-5/16'],
    ['1', '1-1/2'],
  ]),
  ...inchRows('ASME B18.6.3 nuts', [
    ['#4', '1/4'],
    ['#5', '5/16'],
    ['#6', '5/16'],
    ['#8', '11/32'],
    ['#10', '3/8'],
    ['#12', '7/16'],
    ['1/4', '7/16'],
    ['5/16', '9/16'],
    ['3/8', '5/8'],
  ]),
  ...inchRows('ASME B18.6.3 screws', [
    ['#4', '3/16'],
    ['#5', '3/16'],
    ['#6', '1/4'],
    ['#8', '1/4'],
    ['#10', '5/16'],
    ['#12', '5/16'],
    ['1/4', '3/8'],
    ['5/16', '1/2'],
    ['3/8', '9/16'],
  ]),
];

/** Hexagon sockets of inch cap screws by size, in inches: ASME B18.3, as three publications print them. */
export const inchSocketRows: ReadonlyMap<string, string> = new Map([
  ['#1', '1/16'],
  ['#2', '5/64'],
  ['#3', '5/64'],
  ['#4', '3/32'],
  ['#5', '3/32'],
  ['#6', '7/64'],
  ['#8', '9/64'],
  ['#10', '5/32'],
  ['1/4', '3/16'],
  ['5/16', '1/4'],
  ['3/8', '5/16'],
  ['7/16', '3/8'],
  ['1/2', '3/8'],
  ['5/8', '1/2'],
  ['3/4', '5/8'],
]);
