import { describe, expect, test } from 'vitest';
import { coarsePitch, metricPitches, metricSeries, metricThread } from '../../server/src/core/standards/metricThreads';
import { judgePitch } from '../../server/src/core/standards/standardPitch';
import { advanceOf, minorDiameter } from '../../server/src/core/standards/threadGeometry';
import {
  unifiedSize,
  unifiedSizeOf,
  unifiedSizes,
  unifiedThread,
} from '../../server/src/core/standards/unifiedThreads';

function metric(diameter: number, pitch: number) {
  return judgePitch({ system: 'metric', diameter, pitch });
}

describe('the metric series', () => {
  test('grow in diameter, and their pitches become finer along a row and never finer down the coarse ones', () => {
    const diameters = metricSeries.map(({ diameter }) => diameter);
    expect([...diameters].sort((a, b) => a - b)).toEqual(diameters);
    for (const diameter of diameters) {
      const pitches = metricPitches(diameter);
      expect([...pitches].sort((a, b) => b - a)).toEqual(pitches);
    }
    const coarse = metricSeries.flatMap((series) => series.coarse ?? []);
    expect([...coarse].sort((a, b) => a - b)).toEqual(coarse);
  });

  test('leave a core in every thread', () => {
    for (const { diameter } of metricSeries) {
      for (const pitch of metricPitches(diameter)) {
        expect(minorDiameter({ system: 'metric', diameter, pitch })).toBeGreaterThan(diameter * 0.7);
      }
    }
  });

  test('say nothing of what is not in them', () => {
    expect(coarsePitch(23)).toBeUndefined();
    expect(metricPitches(23)).toEqual([]);
    expect(metricThread(5, 0.7)).toBeUndefined();
    expect(metricThread(25)).toBeUndefined();
    expect(metricThread(5)).toEqual({ system: 'metric', diameter: 5, pitch: 0.8 });
  });
});

describe('the unified series', () => {
  test('numbered sizes are 0.060 in and 0.013 in for each number', () => {
    for (const { size, inches } of unifiedSizes.filter((one) => one.size.startsWith('#'))) {
      expect(inches).toBeCloseTo(0.06 + 0.013 * Number(size.slice(1)), 12);
    }
  });

  test('fractions are what they say', () => {
    for (const { size, inches } of unifiedSizes.filter((one) => one.size.includes('/'))) {
      const [top, bottom] = size.split('/').map(Number);
      expect(inches).toBe((top ?? 0) / (bottom ?? 1));
    }
  });

  test('fine is finer than coarse, and extra fine than fine', () => {
    for (const { threadsPerInch } of unifiedSizes) {
      const counts = [threadsPerInch.UNC, threadsPerInch.UNF, threadsPerInch.UNEF].flatMap((count) => count ?? []);
      expect([...counts].sort((a, b) => a - b)).toEqual(counts);
    }
  });

  test('are found by diameter to the written ten-thousandth', () => {
    expect(unifiedSizeOf(0.19)?.size).toBe('#10');
    expect(unifiedSizeOf(0.313)?.size).toBe('5/16');
    expect(unifiedSizeOf(0.2)).toBeUndefined();
    expect(unifiedSize('#7')).toBeUndefined();
    expect(unifiedThread('#4', 'UNEF')).toBeUndefined();
  });
});

describe('is this a standard pitch', () => {
  test.each([
    [5, 0.8, 'coarse'],
    [5, 0.5, 'fine'],
    [8, 1, 'fine'],
    [12, 1.25, 'fine'],
    [30, 3.5, 'coarse'],
  ])('M%s×%s: yes, %s', (diameter, pitch, series) => {
    expect(metric(diameter, pitch)).toEqual({ kind: 'standard', series });
  });

  test('the nearest pitches come first', () => {
    expect(metric(5, 0.9)).toEqual({ kind: 'pitch-not-standard', nearest: [0.8, 0.5] });
    expect(metric(8, 0.8)).toEqual({ kind: 'pitch-not-standard', nearest: [0.75, 1, 1.25] });
  });

  test('a strange diameter is told with its neighbours', () => {
    expect(metric(13, 1.5)).toEqual({ kind: 'diameter-not-standard', nearest: [14, 12] });
  });

  test('beyond the tables nothing is said', () => {
    expect(metric(100, 6)).toEqual({ kind: 'out-of-range' });
    expect(judgePitch({ system: 'unified', diameter: 50.8, pitch: 25.4 / 4.5 })).toEqual({ kind: 'out-of-range' });
  });

  test('unified threads', () => {
    const quarter = (count: number) => judgePitch({ system: 'unified', diameter: 6.35, pitch: 25.4 / count });
    expect(quarter(20)).toEqual({ kind: 'standard', series: 'UNC' });
    expect(quarter(28)).toEqual({ kind: 'standard', series: 'UNF' });
    const { kind, nearest } = quarter(27) as { kind: string; nearest: readonly number[] };
    expect(kind).toBe('pitch-not-standard');
    expect(nearest.map((pitch) => Math.round(25.4 / pitch))).toEqual([28, 32, 20]);
  });
});

test('a turn advances a thread by its pitch', () => {
  const thread = { system: 'metric', diameter: 5, pitch: 0.8 } as const;
  expect(advanceOf(thread, 360)).toBeCloseTo(0.8, 12);
  expect(advanceOf(thread, 110)).toBeCloseTo(0.8 * (110 / 360), 12);
});
