import { describe, expect, test } from 'vitest';
import {
  boundsOf,
  compareQuantities,
  convert,
  type Dimension,
  findUnit,
  formatQuantity,
  liesWithin,
  parseQuantity,
  type Quantity,
  type QuantityFormat,
  sameQuantity,
} from '../../server/src/core/quantity';

function read(text: string, dimension: Dimension = 'torque'): Quantity {
  const { quantity } = parseQuantity(text, dimension);
  if (quantity === undefined) throw new Error(`not a quantity: ${text}`);
  return quantity;
}

function into(symbol: string, dimension: Dimension = 'torque') {
  const unit = findUnit(dimension, symbol);
  if (unit === undefined) throw new Error(`not a unit: ${symbol}`);
  return unit;
}

describe('a converted value is rounded as it was written', () => {
  test.each<[string, string, string, Dimension?]>([
    ['5.1 ± 0.3 N·m', 'lbf·in', '45 ± 3 lbf·in'],
    ['45 ± 3 lbf·in', 'N·m', '5.1 ± 0.3 N·m'],
    ['25 ± 1 N·m', 'lbf·ft', '18.4 ± 0.7 lbf·ft'],
    ['5.1 N·m ± 6 %', 'lbf·in', '45 lbf·in ± 6 %'],
    ['4.8..5.4 N·m', 'lbf·in', '42..48 lbf·in'],
    ['2 N·m + 110°', 'lbf·in', '18 lbf·in + 110°'],
    ['≤ 0.05 mm', 'in', '≤ 0.0020 in', 'length'],
    ['3/8 in', 'mm', '9.5 mm', 'length'],
    ['120 ± 5 °C', '°F', '248 ± 9 °F', 'temperature'],
    ['100 °C ± 10 %', '°F', '212 ± 18 °F', 'temperature'],
    ['20 °C', 'K', '293 K', 'temperature'],
    ['9 °F', 'K', '5 K', 'temperature-difference'],
    ['1.5 bar', 'psi', '22 psi', 'pressure'],
  ])('%s in %s is %s', (text, symbol, expected, dimension = 'torque') => {
    expect(formatQuantity(read(text, dimension), { unit: into(symbol, dimension) })).toBe(expected);
  });
});

test('nothing converts to another dimension', () => {
  expect(convert(read('5 N·m'), into('mm', 'length'))).toBeNull();
  expect(formatQuantity(read('5 N·m'), { unit: into('mm', 'length') })).toBe('5 N·m');
});

describe('writing rules', () => {
  test.each<[string, Dimension, QuantityFormat, string]>([
    ['5,5 N·m', 'torque', { language: 'de' }, '5,5 N·m'],
    ['4.8..5.4 N·m', 'torque', { language: 'de', ranges: 'words' }, '4,8 bis 5,4 N·m'],
    ['4.8..5.4 N·m', 'torque', { language: 'es', ranges: 'words' }, '4,8 a 5,4 N·m'],
    ['4.8..5.4 N·m', 'torque', { ranges: 'words' }, '4.8 to 5.4 N·m'],
    ['100..120°', 'angle', {}, '100°..120°'],
    ['90° ± 5°', 'angle', {}, '90° ± 5°'],
    ['120 C', 'temperature', {}, '120 °C'],
    ['4%', 'ratio', {}, '4 %'],
    ['1500 rpm', 'rotational-speed', {}, '1500 rpm'],
    ['150000.5 rpm', 'rotational-speed', { language: 'de' }, '150 000,5 rpm'],
    ['5.1 ± 0.3 N·m', 'torque', { noBreak: true }, '5.1\u00a0±\u00a00.3\u00a0N·m'],
    ['5.1 N·m (45 lbf·in)', 'torque', { dual: true }, '5.1 N·m (45 lbf·in)'],
    ['5.1 N·m (45 lbf·in)', 'torque', {}, '5.1 N·m'],
    ['-5 °C', 'temperature', {}, '−5 °C'],
  ])('%s as a %s', (text, dimension, format, expected) => {
    expect(formatQuantity(read(text, dimension), format)).toBe(expected);
  });
});

describe('two statements about one thing', () => {
  test.each<[string, string, string, Dimension?]>([
    ['5.1 ± 0.3 N·m', '45 ± 3 lbf·in', 'same'],
    ['45 ± 3 lbf·in', '5.1 ± 0.3 N·m', 'same'],
    ['5.1 ± 0.3 N·m', '4.8..5.4 N·m', 'same'],
    ['4.8..5.4 N·m', '5.1 ± 0.3 N·m', 'same'],
    ['5.1 N·m', '5.10 N·m', 'same'],
    ['5 N·m', '500 N·cm', 'same'],
    ['5.1 N·m', '5 N·m', 'different'],
    ['5.1 N·m', '512 N·cm', 'different'],
    ['5.1 ± 0.3 N·m', '5.1 ± 0.4 N·m', 'different'],
    ['5.1 ± 0.3 N·m', '5.1 N·m', 'first-says-more'],
    ['45 lbf·in', '5.1 ± 0.3 N·m', 'second-says-more'],
    ['5.1 ± 0.3 N·m', '45 ± 3 lbf·ft', 'different'],
    ['2 N·m + 110°', '2 N·m + 110°', 'same'],
    ['2 N·m + 110°', '2 N·m + 90°', 'different'],
    ['2 N·m + 110°', '2 N·m', 'different'],
    ['≤ 5 N·m', '≥ 5 N·m', 'different'],
    ['≤ 5 N·m', '5 N·m', 'different'],
    // In one unit nothing was rounded, so the double that shares the unit decides.
    ['5.1 N·m', '46 lbf·in (5.2 N·m)', 'different'],
    ['≤ 0.05 mm', '≤ 50 µm', 'same', 'length'],
    ['20 °C', '68 °F', 'same', 'temperature'],
    ['20 °C', '20 K', 'different', 'temperature'],
  ])('%s and %s: %s', (first, second, expected, dimension = 'torque') => {
    const [a, b] = [read(first, dimension), read(second, dimension)];
    expect(compareQuantities(a, b)).toBe(expected);
    expect(sameQuantity(a, b)).toBe(expected === 'same');
  });
});

test('one statement lies within another', () => {
  expect(liesWithin(read('5.1 ± 0.3 N·m'), read('4.8..5.4 N·m'))).toBe(true);
  expect(liesWithin(read('5.1 ± 0.4 N·m'), read('4.8..5.4 N·m'))).toBe(false);
  expect(liesWithin(read('5 N·m'), read('≤ 5 N·m'))).toBe(true);
  expect(liesWithin(read('≤ 5 N·m'), read('4..5 N·m'))).toBe(false);
});

test('bounds carry no binary noise', () => {
  expect(boundsOf(read('5.1 ± 0.3 N·m'))).toEqual({ lowest: 4.8, nominal: 5.1, highest: 5.4 });
});
