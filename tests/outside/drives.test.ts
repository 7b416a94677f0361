import { describe, expect, test } from 'vitest';
import { drivesFor } from '../../server/src/core/standards/acrossFlats';
import { hexagonFace } from '../../server/src/core/standards/bearingFaces';
import { hexalobularSize, hexalobularSizes } from '../../server/src/core/standards/driveTables';
import { squareDriveOf, squareDrives } from '../../server/src/core/standards/squareDrives';
import type { ThreadSize } from '../../server/src/core/standards/threadGeometry';
import { unifiedThread } from '../../server/src/core/standards/unifiedThreads';

function metric(diameter: number): ThreadSize {
  return { system: 'metric', diameter, pitch: 1 };
}

function width(thread: ThreadSize, standard: string): number | undefined {
  const found = drivesFor(thread).find((one) => one.standard.includes(standard))?.drive;
  return found === undefined || found.kind === 'hexalobular' ? undefined : found.acrossFlats;
}

/**
 * Widths across flats in mm, ISO 4014, 4017, 4032 and, where they differ, DIN 931, 933, 934: two sets of fastener tables compared. One
 * prints 22 for ISO M14 bolts and nuts; the other prints 21, which is right (ISO 4014, from memory).
 */
test.each([
  [3, 5.5, undefined],
  [4, 7, undefined],
  [5, 8, undefined],
  [6, 10, undefined],
  [8, 13, undefined],
  [10, 16, 17],
  [12, 18, 19],
  [14, 21, 22],
  [16, 24, undefined],
  [18, 27, undefined],
  [20, 30, undefined],
  [22, 34, 32],
  [24, 36, undefined],
])('hexagons M%s', (diameter, iso, din) => {
  expect(width(metric(diameter), 'ISO 4014')).toBe(iso);
  expect(width(metric(diameter), 'DIN 934')).toBe(din);
});

/** Widths as two tables of tightening torques print them beside the thread, both with those of DIN. */
test.each([
  [4, 7],
  [5, 8],
  [6, 10],
  [8, 13],
  [10, 17],
  [12, 19],
  [14, 22],
  [16, 24],
  [18, 27],
  [20, 30],
  [22, 32],
  [24, 36],
  [27, 41],
  [30, 46],
])('a torque table has M%s with %s mm', (diameter, printed) => {
  expect([width(metric(diameter), 'ISO 4014'), width(metric(diameter), 'DIN 934')]).toContain(printed);
});

/** Washer faces are a little smaller than the hexagon: from 82 % on small threads to 96 % of its width (ISO 4014, product grade A). */
test.each([3, 4, 5, 6, 8, 10, 12, 14, 16])('the washer face of M%s lies within its hexagon', (diameter) => {
  const face = hexagonFace(diameter)?.outer ?? 0;
  const flats = width(metric(diameter), 'ISO 4014') ?? 0;
  expect(face / flats).toBeGreaterThan(0.82);
  expect(face / flats).toBeLessThan(0.96);
});

/** Flange nuts ISO 4161 in mm: a set of fastener tables. */
test.each([
  [5, 8],
  [6, 10],
  [8, 13],
  [10, 15],
  [12, 18],
  [14, 21],
  [16, 24],
])('flange nut M%s: %s mm', (diameter, expected) => {
  expect(width(metric(diameter), 'ISO 4161')).toBe(expected);
});

/** Hexagon sockets ISO 4762 in mm: a set of fastener tables and two web tables. */
test.each([
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
])('socket head screw M%s: %s mm', (diameter, expected) => {
  expect(width(metric(diameter), 'ISO 4762')).toBe(expected);
});

/** Widths across corners of those sockets, smallest, in mm, from the same tables: a hexagon is 2/√3 as wide there, less its rounding. */
test.each([
  [3, 2.87],
  [4, 3.44],
  [5, 4.58],
  [6, 5.72],
  [8, 6.86],
  [10, 9.15],
  [12, 11.43],
  [14, 13.72],
  [16, 16],
])('the socket of M%s is %s mm across corners', (diameter, corners) => {
  const flats = width(metric(diameter), 'ISO 4762') ?? 0;
  expect(corners / flats).toBeGreaterThan(1.13);
  expect(corners / flats).toBeLessThan(2 / Math.sqrt(3));
});

describe('ISO 10664', () => {
  /** Dimension A in mm: a set of fastener tables. */
  test.each([
    ['T6', 1.75],
    ['T8', 2.4],
    ['T10', 2.8],
    ['T15', 3.35],
    ['T20', 3.95],
    ['T25', 4.5],
    ['T30', 5.6],
    ['T40', 6.75],
    ['T45', 7.93],
    ['T50', 8.95],
    ['T55', 11.35],
    ['T60', 13.45],
    ['T70', 15.7],
    ['T80', 17.75],
    ['T90', 20.2],
    ['T100', 22.4],
  ])('%s: %s mm', (name, outer) => {
    expect(hexalobularSize(name)?.outer).toBe(outer);
  });

  /** Half of A as a second publication prints it. */
  test.each([
    [6, 0.875],
    [8, 1.2],
    [10, 1.4],
    [15, 1.675],
    [20, 1.975],
    [25, 2.25],
    [30, 2.8],
    [40, 3.375],
    [45, 3.965],
    [50, 4.475],
    [55, 5.675],
    [60, 6.725],
    [70, 7.85],
    [80, 8.875],
    [90, 10.1],
    [100, 11.2],
  ])('size %s has a radius of %s mm', (number, radius) => {
    expect((hexalobularSize(`T${number}`)?.outer ?? 0) / 2).toBeCloseTo(radius, 9);
  });

  test('there is no T9 and no T27 (from memory), and the rest grows', () => {
    expect(hexalobularSize('T9')).toBeUndefined();
    expect(hexalobularSize('T27')).toBeUndefined();
    const outers = hexalobularSizes.map(({ outer }) => outer);
    expect([...outers].sort((a, b) => a - b)).toEqual(outers);
  });
});

describe('inch fasteners', () => {
  /** Largest width across flats of cap screws, ASME B18.2.1, in inches to the thousandth: three publications. */
  test.each([
    ['1/4', 0.438],
    ['5/16', 0.5],
    ['3/8', 0.562],
    ['7/16', 0.625],
    ['1/2', 0.75],
    ['9/16', 0.812],
    ['5/8', 0.938],
    ['3/4', 1.125],
    ['7/8', 1.312],
    ['1', 1.5],
  ])('cap screw %s: %s in', (size, printed) => {
    // The thousandth is cut or rounded from a sixteenth: 0.8125 is printed as 0.812.
    expect(Math.abs(inches(size, 'B18.2.1') - printed)).toBeLessThanOrEqual(0.00051);
  });

  /** Smallest width of nuts, ASME B18.2.2, in mm: a set of fastener tables. It is 2 to 3 % under the nominal width. */
  test.each([
    ['1/4', 10.9982],
    ['5/16', 12.5603],
    ['3/8', 14.1478],
    ['7/16', 17.3101],
    ['1/2', 18.8722],
    ['9/16', 22.0472],
    ['5/8', 23.622],
    ['3/4', 28.1051],
    ['7/8', 32.7787],
    ['1', 37.465],
  ])('nut %s: at least %s mm', (size, smallest) => {
    const nominal = inches(size, 'B18.2.2') * 25.4;
    expect(smallest / nominal).toBeGreaterThan(0.97);
    expect(smallest / nominal).toBeLessThan(1);
  });

  /** Machine screw nuts, ASME B18.6.3, largest width in inches: a publication. */
  test.each([
    ['#4', 0.25],
    ['#5', 0.312],
    ['#6', 0.312],
    ['#8', 0.344],
    ['#10', 0.375],
    ['#12', 0.438],
  ])('machine screw nut %s: %s in', (size, printed) => {
    expect(Math.abs(inches(size, 'B18.6.3 nuts') - printed)).toBeLessThanOrEqual(0.00051);
  });

  /** Hexagon heads of machine screws, ASME B18.6.3, largest width in inches: two publications. */
  test.each([
    ['#4', 0.188],
    ['#5', 0.188],
    ['#6', 0.25],
    ['#8', 0.25],
    ['#10', 0.312],
    ['#12', 0.312],
    ['1/4', 0.375],
    ['5/16', 0.5],
    ['3/8', 0.562],
  ])('machine screw %s: %s in', (size, printed) => {
    expect(Math.abs(inches(size, 'B18.6.3 screws') - printed)).toBeLessThanOrEqual(0.00051);
  });

  /** Hexagon sockets, ASME B18.3, in inches: decimals of two publications, fractions of a third. */
  test.each([
    ['#4', 0.094],
    ['#5', 0.094],
    ['#6', 0.109],
    ['#8', 0.141],
    ['#10', 0.156],
    ['1/4', 0.188],
    ['5/16', 0.25],
    ['3/8', 0.312],
    ['7/16', 0.375],
    ['1/2', 0.375],
  ])('socket head screw %s: %s in', (size, printed) => {
    expect(Math.abs(inches(size, 'B18.3') - printed)).toBeLessThanOrEqual(0.00051);
  });
});

function inches(size: string, standard: string): number {
  const thread = unifiedThread(size, 'UNF');
  const found = thread && width(thread, standard);
  if (found === undefined) throw new Error(`no ${size} of ${standard}`);
  return found / 25.4;
}

/** ISO 1174-1 nominal sizes with their inch names, and highest torques of ISO 6789 in N·m: from memory. */
test.each([
  [6.3, '1/4', 30],
  [10, '3/8', 135],
  [12.5, '1/2', 340],
  [20, '3/4', 1000],
  [25, '1', 2100],
])('square %s mm is %s in and takes %s N·m', (nominal, inch, highest) => {
  expect(squareDriveOf(nominal)).toMatchObject({ inch, highestTorque: highest });
});

/** A shaft's torque grows with the cube of its size, so that the limits of one standard must grow about so. */
test('the limits of the squares are all of one steel', () => {
  const stresses = squareDrives.map(({ across, highestTorque }) => highestTorque / across ** 3);
  expect(Math.max(...stresses) / Math.min(...stresses)).toBeLessThan(1.45);
});
