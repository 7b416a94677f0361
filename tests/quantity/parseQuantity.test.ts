import { describe, expect, test } from 'vitest';
import { boundsOf, type Dimension, formatQuantity, hasTolerance, parseQuantity } from '../../server/src/core/quantity';

/** Text, what it is written as, lowest, highest in base units. */
type Row = readonly [text: string, written: string, lowest: number, highest: number, dimension?: Dimension];

const forms: readonly Row[] = [
  ['5.1 N·m', '5.1 N·m', 5.1, 5.1],
  ['5.1 ± 0.3 N·m', '5.1 ± 0.3 N·m', 4.8, 5.4],
  ['5.1 N·m ± 0.3', '5.1 ± 0.3 N·m', 4.8, 5.4],
  ['5.1 N·m ± 0.3 N·m', '5.1 ± 0.3 N·m', 4.8, 5.4],
  ['5.1 +/- 0.3 N·m', '5.1 ± 0.3 N·m', 4.8, 5.4],
  ['5.1 +- 0.3 N·m', '5.1 ± 0.3 N·m', 4.8, 5.4],
  ['5.1 N·m ± 6 %', '5.1 N·m ± 6 %', 4.794, 5.406],
  ['5.1 ± 6 % N·m', '5.1 N·m ± 6 %', 4.794, 5.406],
  ['5.1 +0.3/-0.1 N·m', '5.1 +0.3/−0.1 N·m', 5, 5.4],
  ['5.1 N·m −0.1/+0.3', '5.1 +0.3/−0.1 N·m', 5, 5.4],
  ['25 +0.021/0 mm', '25 +0.021/0 mm', 25, 25.021, 'length'],
  ['10 0/-0.5 mm', '10 0/−0.5 mm', 9.5, 10, 'length'],
  ['4.8..5.4 N·m', '4.8..5.4 N·m', 4.8, 5.4],
  ['4.8 to 5.4 N·m', '4.8..5.4 N·m', 4.8, 5.4],
  ['4.8 – 5.4 N·m', '4.8..5.4 N·m', 4.8, 5.4],
  ['4.8-5.4 N·m', '4.8..5.4 N·m', 4.8, 5.4],
  ['4.8 N·m..5.4 N·m', '4.8..5.4 N·m', 4.8, 5.4],
  ['-40..-5 °C', '−40..−5 °C', -40, -5, 'temperature'],
  ['≤ 0.05 mm', '≤ 0.05 mm', Number.NEGATIVE_INFINITY, 0.05, 'length'],
  ['<= 0.05 mm', '≤ 0.05 mm', Number.NEGATIVE_INFINITY, 0.05, 'length'],
  ['max. 0.05 mm', '≤ 0.05 mm', Number.NEGATIVE_INFINITY, 0.05, 'length'],
  ['0.05 mm max', '≤ 0.05 mm', Number.NEGATIVE_INFINITY, 0.05, 'length'],
  ['≥ 120 °C', '≥ 120 °C', 120, Number.POSITIVE_INFINITY, 'temperature'],
  ['min 120 °C', '≥ 120 °C', 120, Number.POSITIVE_INFINITY, 'temperature'],
  ['5 min', '5 min', 300, 300, 'time'],
  ['2 N·m + 110°', '2 N·m + 110°', 2, 2],
  ['2 ± 0.2 N·m then 110° ± 5°', '2 ± 0.2 N·m + 110° ± 5°', 1.8, 2.2],
  ['5.1 ± 0.3 N·m (45 ± 3 lbf·in)', '5.1 ± 0.3 N·m (45 ± 3 lbf·in)', 4.8, 5.4],
  ['2 N·m (18 lbf·in) + 110°', '2 N·m + 110° (18 lbf·in)', 2, 2],
  ['0.028..0.042 mm (0.0011..0.0017 in)', '0.028..0.042 mm (0.0011..0.0017 in)', 0.028, 0.042, 'length'],
  ['120 ± 5 °C', '120 ± 5 °C', 115, 125, 'temperature'],
  ['120 °C ± 5 K', '120 ± 5 °C', 115, 125, 'temperature'],
  ['257 ± 9 °F (125 ± 5 °C)', '257 ± 9 °F (125 ± 5 °C)', 120, 130, 'temperature'],
  ['3/8 in', '3/8 in', 9.525, 9.525, 'length'],
  ['1 1/2 in', '1 1/2 in', 38.1, 38.1, 'length'],
  ['1½ in', '1½ in', 38.1, 38.1, 'length'],
  ['150 000 rpm', '150 000 rpm', 150000, 150000, 'rotational-speed'],
  ['4 ± 1 %', '4 ± 1 %', 3, 5, 'ratio'],
];

describe('every form of a quantity is read', () => {
  test.each(forms.map((row) => ({ row, name: row[0] })))('$name', ({ row }) => {
    const [text, written, lowest, highest, dimension = 'torque'] = row;
    const { quantity, problems } = parseQuantity(text, dimension);
    expect(problems).toEqual([]);
    if (quantity === undefined) throw new Error('no quantity');
    expect(formatQuantity(quantity, { dual: true })).toBe(written);
    expect(boundsOf(quantity)).toMatchObject({ lowest, highest });
  });
});

test.each([
  ['no-break space', '5.1\u00a0N·m'],
  ['narrow no-break space', '5.1\u202fN·m'],
  ['dot operator', '5.1 N\u22c5m'],
  ['bullet', '5.1 N\u2022m'],
  ['space as product sign', '5.1 N m'],
])('look-alike characters are no problem: %s', (_, text) => {
  const { quantity, problems } = parseQuantity(text, 'torque');
  expect(problems).toEqual([]);
  expect(quantity?.unit.symbol).toBe('N·m');
});

test('both micro signs and both ohm signs are standard', () => {
  expect(parseQuantity('50 \u00b5m', 'length').problems).toEqual([]);
  expect(parseQuantity('50 \u03bcm', 'length').problems).toEqual([]);
  expect(parseQuantity('2 \u2126', 'resistance').problems).toEqual([]);
  expect(parseQuantity('2 \u03a9', 'resistance').problems).toEqual([]);
});

test('spans are offsets into the given text', () => {
  const text = '  5.1 ± 0.3 N·m (45 ± 3 lbf·in)';
  const { quantity } = parseQuantity(text, 'torque');
  if (quantity?.form !== 'single' || quantity.tolerance.kind !== 'symmetric' || quantity.dual === null)
    throw new Error('form');
  const cut = (span: { start: number; end: number }) => text.slice(span.start, span.end);
  expect(cut(quantity.number.span)).toBe('5.1');
  expect(cut(quantity.tolerance.span)).toBe('± 0.3 N·m');
  expect(cut(quantity.tolerance.amount.span)).toBe('0.3');
  expect(cut(quantity.unitSpan)).toBe('N·m');
  expect(cut(quantity.dual.span)).toBe('45 ± 3 lbf·in');
  expect(cut(quantity.dual.unitSpan)).toBe('lbf·in');
});

test('the last written place is kept', () => {
  const resolutionOf = (text: string) => {
    const { quantity } = parseQuantity(text, 'length');
    return quantity?.form === 'single' ? quantity.number.resolution : undefined;
  };
  expect(resolutionOf('5 mm')).toBe(1);
  expect(resolutionOf('5.10 mm')).toBe(0.01);
  expect(resolutionOf('3/8 in')).toBe(1 / 64);
});

test.each([
  ['5 N·m', false],
  ['5 ± 1 N·m', true],
  ['4..5 N·m', true],
  ['≤ 5 N·m', true],
  ['2 ± 0.2 N·m + 110°', false],
  ['2 ± 0.2 N·m + 110° ± 5°', true],
])('a tolerance is seen: %s', (text, expected) => {
  const { quantity } = parseQuantity(text, 'torque');
  expect(quantity === undefined ? undefined : hasTolerance(quantity)).toBe(expected);
});
