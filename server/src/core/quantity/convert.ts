import { offsetsOf } from './bounds';
import type { Quantity, Statement, Tolerance, WrittenNumber } from './quantity';
import { fromBase, toBase, type Unit } from './unit';
import { differenceUnit } from './units';
import { decimalsOf } from './writtenNumber';

/** A converted place may be this power of ten coarser than the first one: 0.885 lbf·in and 0.56 K go by whole ones. Common practice, no source. */
const coarsening = 0.26;
/** A tolerance may not change by more than this part of itself when it is rounded. Our own choice. */
const toleranceRounding = 0.2;

/**
 * The statement in another unit of its dimension, its dual left out; null for a unit of another dimension. Values keep full
 * precision; their resolution is that of the first one, carried over. Spans still point to what was written.
 */
export function convert(quantity: Statement, unit: Unit): Quantity | null {
  const converted = unit.dimension === quantity.dimension ? convertStatement(quantity, unit, null) : null;
  return converted === null ? null : { ...converted, dual: null };
}

/** As `convert`, with a resolution of the caller's where `resolution` is not null. */
export function convertStatement(statement: Statement, unit: Unit, resolution: number | null): Statement {
  const places = resolution ?? resolutionIn(statement, unit);
  const number = (from: WrittenNumber) => newNumber(from, convertValue(from.value, statement.unit, unit), places);
  const tolerance = (value: number, from: Tolerance) => convertTolerance(value, from, statement.unit, unit, places);
  switch (statement.form) {
    case 'range':
      return { ...statement, unit, low: number(statement.low), high: number(statement.high) };
    case 'at-most':
    case 'at-least':
      return { ...statement, unit, number: number(statement.number) };
    default:
      return {
        ...statement,
        unit,
        number: number(statement.number),
        tolerance: tolerance(statement.number.value, statement.tolerance),
      };
  }
}

/** A reading in another unit; equal units give the very same number. */
export function convertValue(value: number, from: Unit, to: Unit): number {
  return from === to ? value : fromBase(toBase(value, from), to);
}

/** A difference in another unit: 9 °F apart is 5 °C apart, whatever the readings. */
export function convertDifference(value: number, from: Unit, to: Unit): number {
  return from.factor === to.factor ? value : (value * differenceUnit(from).factor) / differenceUnit(to).factor;
}

function convertTolerance(value: number, tolerance: Tolerance, from: Unit, to: Unit, resolution: number): Tolerance {
  const difference = (number: WrittenNumber, size = number.value) =>
    newNumber(number, convertDifference(size, from, to), resolution);
  switch (tolerance.kind) {
    case 'symmetric':
      return { ...tolerance, amount: difference(tolerance.amount) };
    case 'asymmetric':
      return { ...tolerance, upper: difference(tolerance.upper), lower: difference(tolerance.lower) };
    case 'percent': {
      // A part of a temperature depends on where its scale starts, so it becomes a difference first.
      if (from.zeroAt === to.zeroAt) return tolerance;
      const { percent, span } = tolerance;
      return { kind: 'symmetric', amount: difference(percent, offsetsOf(value, tolerance).upper), span };
    }
    case 'none':
      return tolerance;
  }
}

/** The place, a power of ten, to which a statement is rounded in another unit. */
function resolutionIn(statement: Statement, unit: Unit): number {
  const finest = Math.min(...numbersOf(statement).map((number) => number.resolution));
  const exponent = Math.ceil(-Math.log10(convertDifference(finest, statement.unit, unit)) - coarsening);
  let places = Math.max(0, exponent);
  const amounts = toleranceNumbers(statement).map((number) =>
    Math.abs(convertDifference(number.value, statement.unit, unit)),
  );
  while (
    places < 12 &&
    amounts.some((amount) => Math.abs(roundTo(amount, places) - amount) > toleranceRounding * amount)
  )
    places++;
  return 10 ** -places;
}

function roundTo(value: number, places: number): number {
  return Number(value.toFixed(places));
}

/** All numbers of a statement that are in its unit. */
export function numbersOf(statement: Statement): readonly WrittenNumber[] {
  if (statement.form === 'range') return [statement.low, statement.high];
  return [statement.number, ...toleranceNumbers(statement)];
}

function toleranceNumbers(statement: Statement): readonly WrittenNumber[] {
  if (!('tolerance' in statement)) return [];
  const { tolerance } = statement;
  if (tolerance.kind === 'symmetric') return [tolerance.amount];
  return tolerance.kind === 'asymmetric' ? [tolerance.upper, tolerance.lower] : [];
}

function newNumber(from: WrittenNumber, value: number, resolution: number): WrittenNumber {
  const text = value.toFixed(Math.min(20, decimalsOf(resolution)));
  return { text, value, resolution, notation: 'decimal', span: from.span };
}
