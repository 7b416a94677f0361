import { describe, expect, test } from 'vitest';
import { coarsestResolution, gaugeSuitability } from '../../server/src/core/standards/gaugeResolution';
import {
  findToolClass,
  settingWithExtension,
  torqueGiven,
  torqueToolClasses,
  usableRange,
} from '../../server/src/core/standards/torqueTools';

test('every class is listed once', () => {
  const names = torqueToolClasses.map(({ type, letter }) => `${type} ${letter}`);
  expect(new Set(names).size).toBe(names.length);
  expect(findToolClass('II', 'H')).toBeUndefined();
});

test('no class is warranted better for small torques than for large ones', () => {
  for (const tool of torqueToolClasses) expect(tool.upTo10).toBeGreaterThanOrEqual(tool.above10);
});

describe('the usable range', () => {
  test('begins at a fifth of the highest torque', () => {
    expect(usableRange(0, 50)).toMatchObject({ lowest: 10, highest: 50 });
  });

  test('begins at the lowest marked torque where that is higher', () => {
    expect(usableRange(15, 50)?.lowest).toBe(15);
  });

  test('shows both starting points', () => {
    expect(usableRange(2, 25)?.steps.map(({ symbol, value }) => `${symbol} ${value}`)).toEqual([
      'M_mark 2',
      'M_max 25',
      'M_20 5',
      'M_min 5',
    ]);
  });

  test.each([
    [10, 10],
    [12, 10],
    [-1, 10],
    [0, 0],
    [0, Number.POSITIVE_INFINITY],
  ])('%d to %d N·m is none', (lowest, highest) => expect(usableRange(lowest, highest)).toBeUndefined());
});

test('a wrench of 4 % set to 5 N·m gives 4.8 to 5.2 N·m', () => {
  const given = torqueGiven(5, 4);
  expect(given?.lowest).toBeCloseTo(4.8, 12);
  expect(given?.highest).toBeCloseTo(5.2, 12);
  expect(torqueGiven(5, 0)).toBeUndefined();
});

describe('an extension', () => {
  test('straight on lowers the setting, back raises it, square leaves it', () => {
    expect(settingWithExtension(10, 300, 50, 0)?.setting).toBeLessThan(10);
    expect(settingWithExtension(10, 300, 50, 180)?.setting).toBeGreaterThan(10);
    expect(settingWithExtension(10, 300, 50, 90)?.setting).toBe(10);
    expect(settingWithExtension(10, 300, 50, 270)?.setting).toBe(10);
    expect(settingWithExtension(10, 300, 50, -90)?.setting).toBe(10);
  });

  test('to either side is the same', () => {
    const [left, right] = [settingWithExtension(10, 300, 50, 30), settingWithExtension(10, 300, 50, -30)];
    expect(left?.setting).toBeCloseTo(right?.setting ?? 0, 12);
  });

  test.each([
    ['no torque', 0, 300, 50, 0],
    ['no lever', 10, 0, 50, 0],
    ['a negative extension', 10, 300, -50, 0],
    ['a fastener at the grip', 10, 300, 300, 180],
    ['no angle', 10, 300, 50, Number.NaN],
  ])('%s gives nothing', (_, torque, lever, extension, angle) => {
    expect(settingWithExtension(torque, lever, extension, angle)).toBeUndefined();
  });
});

describe('a gauge', () => {
  test('the coarsest resolution that suits does suit, and one that is a little coarser does not', () => {
    for (const suits of ['good', 'fair', 'least'] as const) {
      const coarsest = coarsestResolution(0.07, suits) ?? 0;
      expect(gaugeSuitability(coarsest, 0.07)).toBe(suits);
      expect(gaugeSuitability(coarsest * 1.001, 0.07)).not.toBe(suits);
    }
  });

  test('without a tolerance nothing can be judged', () => {
    expect(gaugeSuitability(0.01, 0)).toBeUndefined();
    expect(gaugeSuitability(0, 0.1)).toBeUndefined();
    expect(coarsestResolution(Number.POSITIVE_INFINITY, 'good')).toBeUndefined();
  });
});
