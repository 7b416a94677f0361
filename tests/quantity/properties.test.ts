import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  allUnits,
  convert,
  findQuantities,
  formatQuantity,
  parseQuantity,
  sameQuantity,
  unitsOf,
} from '../../server/src/core/quantity';

const seed = Number(process.env.WITNESSMARK_SEED ?? Date.now() % 2 ** 31);
console.log(`seed ${seed}: set WITNESSMARK_SEED to run the same values again`);
const options = { seed, numRuns: 500 };

const unit = fc.constantFrom(...allUnits);
/** A number with up to four decimals, as text. */
const number = fc
  .tuple(fc.integer({ min: 1, max: 999_999 }), fc.integer({ min: 0, max: 4 }))
  .map(([digits, places]) => (digits / 10 ** places).toFixed(places));
const form = fc.constantFrom<(a: string, b: string, symbol: string) => string>(
  (a, _, symbol) => `${a} ${symbol}`,
  (a, b, symbol) => `${a} ± ${b} ${symbol}`,
  (a, b, symbol) => `${a} +${b}/-${b} ${symbol}`,
  (a, b, symbol) => `${a} ${symbol} ± ${b} %`,
  (a, b, symbol) => (Number(a) <= Number(b) ? `${a}..${b} ${symbol}` : `${b}..${a} ${symbol}`),
  (a, _, symbol) => `≤ ${a} ${symbol}`,
  (a, _, symbol) => `≥ ${a} ${symbol}`,
);
const written = fc
  .tuple(unit, number, number, form)
  .map(([unit, a, b, write]) => ({ unit, text: write(a, b, unit.symbol) }));

test('what is written is read as the same quantity, with nothing to mend', () => {
  fc.assert(
    fc.property(written, fc.boolean(), ({ unit, text }, noBreak) => {
      const { quantity } = parseQuantity(text, unit.dimension);
      if (quantity === undefined) throw new Error(text);
      const formatted = formatQuantity(quantity, { noBreak });
      const again = parseQuantity(formatted, unit.dimension);
      expect(again.problems).toEqual([]);
      expect(again.quantity !== undefined && sameQuantity(again.quantity, quantity)).toBe(true);
      expect(again.quantity !== undefined && formatQuantity(again.quantity, { noBreak })).toBe(formatted);
    }),
    options,
  );
});

test('a conversion there and back changes nothing', () => {
  fc.assert(
    fc.property(
      unit.chain((from) => fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(from.dimension)), number)),
      ([from, to, text]) => {
        const { quantity } = parseQuantity(`${text} ${from.symbol}`, from.dimension);
        const there = quantity === undefined ? null : convert(quantity, to);
        const back = there === null ? null : convert(there, from);
        if (back?.form !== 'single') throw new Error(text);
        const room = 1e-12 * Math.max(Number(text), Math.abs(from.zeroAt), Math.abs(to.zeroAt));
        expect(Math.abs(back.number.value - Number(text))).toBeLessThanOrEqual(room + 1e-12);
      },
    ),
    options,
  );
});

test('a converted double always agrees with what it was converted from', () => {
  fc.assert(
    fc.property(
      unit.chain((from) =>
        fc.tuple(fc.constant(from), fc.constantFrom(...unitsOf(from.dimension)), number, number, form),
      ),
      ([from, to, a, b, write]) => {
        const text = write(a, b, from.symbol);
        const { quantity } = parseQuantity(text, from.dimension);
        if (quantity === undefined) throw new Error(text);
        const both = `${formatQuantity(quantity)} (${formatQuantity(quantity, { unit: to })})`;
        expect(
          parseQuantity(both, from.dimension).problems.map((problem) => problem.kind),
          both,
        ).toEqual([]);
      },
    ),
    options,
  );
});

test('any text gives a reading whose spans lie in the text', () => {
  const piece = fc.constantFrom(
    '5',
    '.1',
    ',',
    ' ',
    '±',
    '..',
    'N·m',
    'lb',
    '(',
    ')',
    '+',
    '-',
    '/',
    '°',
    '≤',
    'max',
    'to',
    '%',
    '#',
    '½',
    'then',
    '\u00a0',
    'x',
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string({ unit: 'grapheme' }),
        fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
      ),
      (text) => {
        const { problems } = parseQuantity(text, 'torque');
        for (const { span } of problems) {
          expect(span.start).toBeGreaterThanOrEqual(0);
          expect(span.end).toBeGreaterThanOrEqual(span.start);
          expect(span.end).toBeLessThanOrEqual(text.length);
        }
        for (const { span } of findQuantities(text)) expect(span.end).toBeLessThanOrEqual(text.length);
      },
    ),
    options,
  );
});
