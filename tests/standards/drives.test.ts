import { describe, expect, test } from 'vitest';
import { diametersForHexagon, drivesFor, hexagonWidths } from '../../server/src/core/standards/acrossFlats';
import { hexalobularSize } from '../../server/src/core/standards/driveTables';
import {
  readSquareDrive,
  smallestSquareFor,
  squareDriveOf,
  squareDrives,
} from '../../server/src/core/standards/squareDrives';
import { readThreadDesignation } from '../../server/src/core/standards/threadDesignation';

function drives(text: string): string[] {
  const thread = readThreadDesignation(text).designation;
  if (thread === undefined) throw new Error(`${text} was not read`);
  return drivesFor(thread).map(({ drive, standard, age }) => `${drive.kind} ${drive.written}, ${standard}, ${age}`);
}

function widths(text: string): readonly number[] {
  const thread = readThreadDesignation(text).designation;
  return thread === undefined ? [] : hexagonWidths(thread);
}

describe('drives of a thread', () => {
  test('metric', () => {
    expect(drives('M10×1')).toEqual([
      'hexagon 16 mm, ISO 4014, ISO 4017, ISO 4032, current',
      'hexagon 15 mm, ISO 4161, current',
      'hexagon 17 mm, DIN 931, DIN 933, DIN 934, older',
      'hex-socket 8 mm, ISO 4762, current',
      'hexalobular T50, ISO 14579, current',
    ]);
  });

  test('unified', () => {
    expect(drives('7/16-20 UNF')).toEqual([
      'hexagon 5/8 in, ASME B18.2.1, current',
      'hexagon 11/16 in, ASME B18.2.2, current',
      'hex-socket 3/8 in, ASME B18.3, current',
    ]);
  });

  test('the usual width comes first, without repeats', () => {
    expect(widths('M10')).toEqual([16, 15, 17]);
    expect(widths('M6')).toEqual([10]);
    expect(widths('1-8 UNC').map((width) => Math.round(width * 100) / 100)).toEqual([38.1]);
  });

  test('of an unusual thread nothing is said', () => {
    expect(drives('M9×1')).toEqual([]);
    expect(drives('1-1/8-7')).toEqual([]);
  });

  test('threads of a width', () => {
    expect(diametersForHexagon(8)).toEqual([5]);
    expect(diametersForHexagon(17)).toEqual([10]);
    expect(diametersForHexagon(11)).toEqual([]);
  });
});

test('a hexalobular size is found by its name, and one that is not in the standard is not', () => {
  expect(hexalobularSize('T30')?.outer).toBe(5.6);
  expect(hexalobularSize('TX 30')?.name).toBe('T30');
  expect(hexalobularSize('30')?.name).toBe('T30');
  expect(hexalobularSize('T27')).toBeUndefined();
  expect(hexalobularSize('')).toBeUndefined();
});

describe('square drives', () => {
  test.each([
    ['1/4', '1/4'],
    ['1/4 in', '1/4'],
    ['1/4"', '1/4'],
    ['6.3', '1/4'],
    ['6.3 mm', '1/4'],
    ['12,5 mm', '1/2'],
    ['12.7 mm', '1/2'],
    ['10', '3/8'],
    ['1', '1'],
    ['1 in', '1'],
  ])('%s is the %s in square', (text, inch) => {
    expect(readSquareDrive(text)?.inch).toBe(inch);
  });

  test.each(['', '5/8', '11', '1/4 mm', 'big', '1/'])('%j is none', (text) => {
    expect(readSquareDrive(text)).toBeUndefined();
  });

  test('nominal and measured size are the same square', () => {
    for (const drive of squareDrives) {
      expect(squareDriveOf(drive.nominal)).toBe(drive);
      expect(squareDriveOf(drive.across)).toBe(drive);
    }
  });

  test('the smallest square for a torque', () => {
    expect(smallestSquareFor(5)?.inch).toBe('1/4');
    expect(smallestSquareFor(30)?.inch).toBe('1/4');
    expect(smallestSquareFor(31)?.inch).toBe('3/8');
    expect(smallestSquareFor(3000)).toBeUndefined();
  });
});
