import { describe, expect, test } from 'vitest';
import { assumedWidths } from '../../server/src/core/workings/toolAssumedWidths';
import { type Grip, gripNamed, gripsMeet } from '../../server/src/core/workings/toolGrip';
import { significant, widthText } from '../../server/src/core/workings/toolSizeText';

function flats(width: number, rounding = 0, faces: 'outer' | 'inner' | 'either' = 'either'): Grip {
  return { is: 'flats', width, faces, rounding };
}

describe('grips meet', () => {
  test.each([
    ['the same width', flats(8), flats(8), true],
    ['7/16 in written to the hundredth', flats(11.11, 0.005), flats(11.1125), true],
    ['5/16 in on 8 mm', flats(7.9375), flats(8), false],
    ['3/4 in on 19 mm', flats(19.05), flats(19), false],
    ['a key in a hexagon from outside', flats(5, 0, 'inner'), flats(5, 0, 'outer'), false],
    ['a size whose faces nobody states', flats(5), flats(5, 0, 'outer'), true],
  ])('%s: %#', (_, one, other, meet) => {
    expect(gripsMeet(one, other)).toBe(meet);
    expect(gripsMeet(other, one)).toBe(meet);
  });

  test('names are the same however they are written, and a length is no name', () => {
    const named = (text: string) => gripNamed(text, 'either');
    expect(named('TX 30')).toEqual(named('T30'));
    expect(named('ph 2')).toEqual(named('PH2'));
    expect(named('T30')).not.toEqual(named('T25'));
    expect(named('5 mm')).toMatchObject({ is: 'flats', width: 5 });
    expect(named(' ')).toBeUndefined();
  });
});

describe('a hexagon that is assumed from a thread', () => {
  test.each([
    ['M5×0.8', 'nut', 8, 'ISO 4032'],
    ['M10x1-LH', 'bolt', 16, 'ISO 4014'],
    ['1/4-20 UNC', 'bolt', 11.1125, 'ASME B18.2.1'],
  ] as const)('%s', (thread, fastener, usual, standard) => {
    expect(assumedWidths(thread, fastener)).toMatchObject({ usual: expect.closeTo(usual, 9), standard });
  });

  test('widths that are met with beside it are let pass', () => {
    expect(assumedWidths('M10×1.5', 'nut')?.met).toEqual(expect.arrayContaining([16, 17, 15, 14, 13]));
    expect(assumedWidths('M10×1.5', 'nut')?.met).not.toContain(18);
  });

  test('nothing is assumed from what is no thread, or from one of no table', () => {
    expect(assumedWidths('G 1/4', 'nut')).toBeUndefined();
    expect(assumedWidths('M5.3×0.8', 'nut')).toBeUndefined();
  });
});

test('a width is written in millimetres, with the inch size that it is', () => {
  expect([8, 5.5, 12.7, 11.1125, 7.9375, 31.75, 25.4].map(widthText)).toEqual([
    '8 mm',
    '5.5 mm',
    '12.7 mm (1/2 in)',
    '11.11 mm (7/16 in)',
    '7.94 mm (5/16 in)',
    '31.75 mm (1-1/4 in)',
    '25.4 mm (1 in)',
  ]);
});

test('a reckoned number has no more digits than make sense', () => {
  expect([4.21656, 0.2, 118.44, 1234.5, 0.0083333].map((value) => significant(value))).toEqual([
    '4.22',
    '0.2',
    '118',
    '1230',
    '0.00833',
  ]);
});
