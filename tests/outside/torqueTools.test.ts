import { describe, expect, test } from 'vitest';
import { gaugeShares, gaugeSuitability } from '../../server/src/core/standards/gaugeResolution';
import {
  calibrationInterval,
  findToolClass,
  permissibleDeviation,
  settingWithExtension,
  usableRange,
} from '../../server/src/core/standards/torqueTools';

function deviationOf(type: 'I' | 'II', letter: string, highest: number): number | undefined {
  const tool = findToolClass(type, letter);
  return tool && permissibleDeviation(tool, highest);
}

/**
 * ISO 6789 as a maker's instruction for checking wrenches quotes it: class II A, ±4 % above 10 N·m, ±6 % up to and
 * including 10 N·m.
 */
test('an adjustable wrench with a scale is within 4 %, up to 10 N·m within 6 %', () => {
  expect(deviationOf('II', 'A', 10.1)).toBe(4);
  expect(deviationOf('II', 'A', 10)).toBe(6);
  expect(deviationOf('II', 'A', 2)).toBe(6);
});

/** The other classes of ISO 6789: from memory. */
test.each<['I' | 'II', string, number]>([
  ['I', 'A', 6],
  ['I', 'B', 4],
  ['I', 'C', 4],
  ['I', 'D', 6],
  ['I', 'E', 6],
  ['II', 'B', 4],
  ['II', 'C', 4],
  ['II', 'D', 6],
  ['II', 'E', 6],
  ['II', 'F', 6],
  ['II', 'G', 6],
])('class %s %s is within %d %% above 10 N·m and 6 %% below', (type, letter, above) => {
  expect(deviationOf(type, letter, 50)).toBe(above);
  expect(deviationOf(type, letter, 5)).toBe(6);
});

/**
 * ISO 6789:2003 tests at 20, 60 and 100 % of the highest torque, as the same instruction quotes it; ISO 6789-1:2017
 * begins at the lowest marked value.
 */
test('a wrench to 25 N·m is usable from 5 N·m, or from where its scale begins', () => {
  expect(usableRange(2.5, 25)).toMatchObject({ lowest: 5, highest: 25 });
  expect(usableRange(6, 25)?.lowest).toBe(6);
});

/**
 * ISO 6789, in the same instruction: 5 000 operations or 12 months, and at once after more than 25 % over the highest
 * torque.
 */
test('recalibration comes after 12 months or 5000 operations', () => {
  expect(calibrationInterval).toEqual({ months: 12, operations: 5000, overloadPercent: 25 });
});

describe('wrench extensions', () => {
  /**
   * Torque, lever, extension, angle, setting. The formula knows no unit, so that inch pounds and inches are as good
   * as newton metres and millimetres. Half a unit in the last printed place is allowed.
   */
  test.each<[string, number, number, number, number, number, number]>([
    ['United States Army TM 9-254, torque wrench extension (in-lb, in)', 70, 12, 2, 0, 60, 0.5],
    ['a published explanation of crow-foot wrenches (lb-ft, in)', 30, 12, 6, 0, 20, 0.5],
    ['a published explanation of extensions with angle (N·m, cm)', 80, 40, 5, 0, 71.1, 0.05],
    ['the same at 90 degrees, where nothing is corrected', 80, 40, 5, 90, 80, 0.05],
    ['FAA AC 43.13-1B, figure 7-2, forwards, from memory (in-lb, in)', 135, 10, 1.5, 0, 117.39, 0.005],
    ['FAA AC 43.13-1B, figure 7-2, backwards, from memory (in-lb, in)', 135, 10, 1.5, 180, 158.82, 0.005],
  ])('%s', (_, torque, lever, extension, angle, printed, half) => {
    const setting = settingWithExtension(torque, lever, extension, angle)?.setting ?? 0;
    expect(Math.abs(setting - printed)).toBeLessThanOrEqual(half);
  });

  /** The reverse of the army example: at a setting of 60 the fastener gets 60·(12 + 2)/12 = 70. */
  test('the wrench gives at the fastener what was wanted', () => {
    const setting = settingWithExtension(70, 12, 2)?.setting ?? 0;
    expect((setting * (12 + 2)) / 12).toBeCloseTo(70, 12);
  });
});

/** GB/T 3177: a gauge's uncertainty within 1/10 of the tolerance, next 1/6, next 1/4. Exact fractions. */
test('gauges are judged by a tenth, a sixth and a quarter of the tolerance', () => {
  expect(gaugeShares).toEqual({ good: 1 / 10, fair: 1 / 6, least: 1 / 4 });
  expect(gaugeSuitability(0.01, 0.1)).toBe('good');
  expect(gaugeSuitability(0.01, 0.06)).toBe('fair');
  expect(gaugeSuitability(0.01, 0.04)).toBe('least');
  expect(gaugeSuitability(0.01, 0.039)).toBe('too-coarse');
});
