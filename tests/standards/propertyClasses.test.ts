import { describe, expect, test } from 'vitest';
import {
  formatPropertyClass,
  matchingBoltClass,
  nutIsStrongEnough,
  type PropertyClass,
  readPropertyClass,
  strengthOf,
} from '../../server/src/core/standards/propertyClasses';

function read(text: string): PropertyClass {
  const found = readPropertyClass(text);
  if (found === undefined) throw new Error(`${text} was not read`);
  return found;
}

describe('reading a class', () => {
  test.each([
    ['8.8', { system: 'ISO 898-1', name: '8.8' }],
    [' 12.9 ', { system: 'ISO 898-1', name: '12.9' }],
    ['10', { system: 'ISO 898-2', name: '10' }],
    ['04', { system: 'ISO 898-2', name: '04' }],
    ['A2-70', { system: 'ISO 3506', steel: 'A2', name: '70' }],
    ['a4 80', { system: 'ISO 3506', steel: 'A4', name: '80' }],
    ['A4-50', { system: 'ISO 3506', steel: 'A4', name: '50' }],
    ['grade 5', { system: 'SAE J429', name: '5' }],
    ['SAE J429 grade 8', { system: 'SAE J429', name: '8' }],
    ['Gr. 2', { system: 'SAE J429', name: '2' }],
  ])('%s', (text, expected) => {
    expect(readPropertyClass(text)).toEqual(expected);
  });

  test.each(['', '8.9', '88', 'A2-75', 'A9-70', 'grade 6', 'toString', 'high tensile', '8,8'])('%j is none', (text) => {
    expect(readPropertyClass(text)).toBeUndefined();
  });

  test.each(['8.8', '10', '05', 'A2-70', 'grade 5'])('%s is written as it is read', (text) => {
    expect(formatPropertyClass(read(text))).toBe(text);
  });
});

describe('strength', () => {
  test('8.8 is stronger above M16', () => {
    expect(strengthOf(read('8.8'), 16)).toMatchObject({ tensile: 800, yield: 640, proof: 580 });
    expect(strengthOf(read('8.8'), 18)).toMatchObject({ tensile: 830, yield: 660, proof: 600 });
  });

  test('a nut counts as the strongest bolt it may be paired with', () => {
    expect(strengthOf(read('10'), 5)).toEqual(strengthOf(read('10.9'), 5));
  });

  test('where the standard has no proof stress the yield stress stands for it', () => {
    expect(strengthOf(read('A2-70'), 8)).toMatchObject({ yield: 450, proof: 450, proofFrom: 'yield' });
    expect(strengthOf(read('8.8'), 8)?.proofFrom).toBe('standard');
  });

  test.each([
    ['9.8', 18],
    ['8.8', 45],
    ['grade 5', 4.826],
    ['04', 5],
  ])('nothing is known of %s at %s mm', (text, diameter) => {
    expect(strengthOf(read(text), diameter)).toBeUndefined();
  });

  test('grade 5 begins with a quarter of an inch itself', () => {
    expect(strengthOf(read('grade 5'), 0.25 * 25.4)?.tensile).toBeCloseTo(827.4, 1);
  });
});

describe('nut and bolt', () => {
  test.each([
    ['8', '8.8', true],
    ['10', '8.8', true],
    ['8', '10.9', false],
    ['5', '5.8', true],
    ['5', '5.6', true],
    ['10', '12.9', false],
    ['12', '12.9', true],
  ])('nut %s on bolt %s: %s', (nut, bolt, expected) => {
    expect(nutIsStrongEnough(read(nut), read(bolt))).toBe(expected);
  });

  test('nothing is said of thin nuts, and of what is no such pair', () => {
    expect(matchingBoltClass(read('04'))).toBeUndefined();
    expect(matchingBoltClass(read('8.8'))).toBeUndefined();
    expect(nutIsStrongEnough(read('05'), read('8.8'))).toBeUndefined();
    expect(nutIsStrongEnough(read('8'), read('A2-70'))).toBeUndefined();
  });
});
