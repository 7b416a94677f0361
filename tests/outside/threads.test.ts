import { describe, expect, test } from 'vitest';
import { coarsePitch, metricPitches, metricThread } from '../../server/src/core/standards/metricThreads';
import {
  leadAngle,
  minorDiameter,
  nutMinorDiameter,
  pitchDiameter,
  stressArea,
  type ThreadSize,
} from '../../server/src/core/standards/threadGeometry';
import { type UnifiedSeries, unifiedSize, unifiedThread } from '../../server/src/core/standards/unifiedThreads';

function metric(diameter: number, pitch?: number): ThreadSize {
  const thread = metricThread(diameter, pitch);
  if (thread === undefined) throw new Error(`no M${diameter}×${pitch}`);
  return thread;
}

function unified(size: string, series: UnifiedSeries): ThreadSize {
  const thread = unifiedThread(size, series);
  if (thread === undefined) throw new Error(`no ${size} ${series}`);
  return thread;
}

/** Half a unit in the last printed place, and a hair for the doubles. */
function expectPrinted(actual: number, printed: number, place: number) {
  expect(Math.abs(actual - printed)).toBeLessThanOrEqual(place / 2 + 1e-9);
}

/**
 * Nominal diameter, pitch, pitch diameter d2, minor diameter d3, nut's minor diameter D1: basic dimensions of ISO 724, worked out with
 * a calculator from its formulas; the pitches as a set of fastener tables prints ISO 262. The M8 row was also found printed.
 */
test.each([
  [3, 0.5, 2.675, 2.387, 2.459],
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: It is a diameter in millimetres.
  [4, 0.7, 3.545, 3.141, 3.242],
  [5, 0.8, 4.48, 4.019, 4.134],
  [6, 1, 5.35, 4.773, 4.917],
  [8, 1.25, 7.188, 6.466, 6.647],
  [10, 1.5, 9.026, 8.16, 8.376],
  [12, 1.75, 10.863, 9.853, 10.106],
  [14, 2, 12.701, 11.546, 11.835],
  [16, 2, 14.701, 13.546, 13.835],
])('M%s×%s: diameters of ISO 724', (diameter, pitch, d2, d3, D1) => {
  expect(coarsePitch(diameter)).toBe(pitch);
  expectPrinted(pitchDiameter(metric(diameter)), d2, 0.001);
  expectPrinted(minorDiameter(metric(diameter)), d3, 0.001);
  expectPrinted(nutMinorDiameter(metric(diameter)), D1, 0.001);
});

/** Lead angle of M8 as a published page on its geometry prints it. */
test('M8 rises at 3.168°', () => {
  expectPrinted(leadAngle(metric(8)), 3.168, 0.001);
});

/** Nominal diameter, pitch, pitch diameter and nut's minor diameter of M1.6 and M1.8, class 4H and 6H basic: a published tap chart. */
test.each([
  [1.6, 0.35, 1.373],
  [1.8, 0.35, 1.573],
])('M%s×%s: pitch diameter of a tap chart', (diameter, pitch, d2) => {
  expectPrinted(pitchDiameter(metric(diameter, pitch)), d2, 0.001);
});

/** Stress areas of ISO 898-1, two publications of its tables, in mm² to three figures. */
test.each([
  [3, 5.03, 0.01],
  [4, 8.78, 0.01],
  [5, 14.2, 0.1],
  [6, 20.1, 0.1],
  [8, 36.6, 0.1],
  [10, 58.0, 0.1],
  [12, 84.3, 0.1],
  [14, 115, 1],
  [16, 157, 1],
])('M%s: stress area of ISO 898-1, %s mm²', (diameter, area, place) => {
  expectPrinted(stressArea(metric(diameter)), area, place);
});

/** Stress areas of fine threads of ISO 898-1 in mm², from memory. */
test.each([
  [8, 1, 39.2],
  [10, 1, 64.5],
  [10, 1.25, 61.2],
  [12, 1.25, 92.1],
  [12, 1.5, 88.1],
])('M%s×%s: stress area of ISO 898-1, %s mm²', (diameter, pitch, area) => {
  expectPrinted(stressArea(metric(diameter, pitch)), area, 0.1);
});

/** Pitches of ISO 262 as a set of fastener tables prints them; all must be among ours, and the first is the coarse one. */
test.each([
  [1.6, [0.35]],
  [1.8, [0.35]],
  [2, [0.4]],
  [2.5, [0.45]],
  [3, [0.5]],
  [3.5, [0.6]],
  [4, [0.7]],
  [5, [0.8]],
  [6, [1]],
  [7, [1]],
  [8, [1.25, 1]],
  [10, [1.5, 1.25, 1]],
  [12, [1.75, 1.5, 1.25]],
  [14, [2, 1.5]],
  [16, [2, 1.5]],
  [18, [2.5, 2, 1.5]],
  [20, [2.5, 2, 1.5]],
  [22, [2.5, 2, 1.5]],
  [24, [3, 2]],
  [27, [3, 2]],
  [30, [3.5, 2]],
])('M%s has the pitches of ISO 262', (diameter, pitches) => {
  expect(coarsePitch(diameter)).toBe(pitches[0]);
  expect(metricPitches(diameter)).toEqual(expect.arrayContaining(pitches));
});

/** Fine pitches that a published thread chart names beside those of ISO 262. */
test.each([
  [2, 0.25],
  [2.5, 0.35],
  [3, 0.35],
  [3.5, 0.35],
  [4, 0.5],
  [4.5, 0.5],
  [5, 0.5],
  [5.5, 0.5],
  [6, 0.75],
  [7, 0.75],
  [8, 0.75],
  [9, 0.75],
  [9, 1],
  [10, 0.75],
])('M%s×%s is in a published thread chart', (diameter, pitch) => {
  expect(metricPitches(diameter)).toContain(pitch);
});

describe('unified threads', () => {
  /** Size, UNF count, pitch diameter, minor diameter of the external thread, stress area: a published UNF table, inches. */
  test.each([
    ['#4', 48, 0.0985, 0.0871, 0.00661],
    ['#6', 40, 0.1218, 0.1082, 0.01015],
    ['#8', 36, 0.146, 0.1309, 0.01474],
    ['#10', 32, 0.1697, 0.1528, 0.02],
    ['1/4', 28, 0.2268, 0.2074, 0.0364],
    ['5/16', 24, 0.2854, 0.2629, 0.058],
    ['3/8', 24, 0.3479, 0.3254, 0.0878],
    ['7/16', 20, 0.405, 0.378, 0.1187],
    ['1/2', 20, 0.4675, 0.4405, 0.1599],
  ])('%s-%s UNF', (size, count, d2, d3, area) => {
    expect(unifiedSize(size)?.threadsPerInch.UNF).toBe(count);
    const thread = unified(size, 'UNF');
    expectPrinted(pitchDiameter(thread) / 25.4, d2, 0.0001);
    // Below a quarter of an inch the table truncates now and then: one unit in the last place.
    expect(Math.abs(minorDiameter(thread) / 25.4 - d3)).toBeLessThanOrEqual(0.0001);
    // The formula of ASME B1.1 gives every printed area within 0.2 %, which is the rounding of the printed figures.
    expect(Math.abs(stressArea(thread) / 645.16 / area - 1)).toBeLessThan(0.002);
  });

  /**
   * Size, UNC count, pitch diameter (one published table), stress area (another), inches. The second prints 0.0163 for 7/16, two
   * digits changed about: by the formula it is 0.1063.
   */
  test.each([
    ['#4', 40, 0.0958, 0.00604],
    ['#6', 32, 0.1177, 0.00909],
    ['#8', 32, 0.1437, 0.014],
    ['#10', 24, 0.1629, 0.0175],
    ['1/4', 20, 0.2175, 0.0318],
    ['5/16', 18, 0.2764, 0.0524],
    ['3/8', 16, 0.3344, 0.0775],
    ['7/16', 14, 0.3911, 0.1063],
    ['1/2', 13, 0.45, 0.1419],
  ])('%s-%s UNC', (size, count, d2, area) => {
    expect(unifiedSize(size)?.threadsPerInch.UNC).toBe(count);
    const thread = unified(size, 'UNC');
    expectPrinted(pitchDiameter(thread) / 25.4, d2, 0.0001);
    expect(Math.abs(stressArea(thread) / 645.16 / area - 1)).toBeLessThan(0.002);
  });

  /** Counts of the small sizes and of 5/8 in a published table of ASME B18.3 screws: UNC and UNF. */
  test.each([
    ['#0', undefined, 80],
    ['#1', 64, 72],
    ['#2', 56, 64],
    ['#3', 48, 56],
    ['#4', 40, 48],
    ['#5', 40, 44],
    ['#6', 32, 40],
    ['#8', 32, 36],
    ['#10', 24, 32],
    ['1/4', 20, 28],
    ['5/16', 18, 24],
    ['3/8', 16, 24],
    ['1/2', 13, 20],
    ['5/8', 11, 18],
  ])('%s: %s UNC, %s UNF', (size, unc, unf) => {
    expect(unifiedSize(size)?.threadsPerInch).toMatchObject({ UNC: unc, UNF: unf });
  });

  /** Pitches in mm of coarse nuts, ASME B18.2.2, in a set of fastener tables. */
  test.each([
    ['9/16', 2.11666666666667],
    ['5/8', 2.30909090909091],
    ['3/4', 2.54],
    ['7/8', 2.82222222222222],
    ['1', 3.175],
  ])('%s UNC has a pitch of %s mm', (size, pitch) => {
    expect(unified(size, 'UNC').pitch).toBeCloseTo(pitch, 9);
  });
});
