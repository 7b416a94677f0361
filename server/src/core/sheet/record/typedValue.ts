import { allUnits, type Dimension, findUnit, parseQuantity, type QuantityProblem, type Unit } from '../../quantity';
import type { SheetLanguage } from '../sheet';

/** A value as somebody typed it. `resolution` is one unit in the last place that was written. */
export type TypedValue =
  | {
      readonly is: 'value';
      readonly number: number;
      readonly unit: Unit;
      readonly resolution: number;
      readonly isBare: boolean;
    }
  | { readonly is: 'unreadable'; readonly why: string };

/** What a number without a unit is in; undefined where nobody can tell. */
export interface Expected {
  readonly dimension: Dimension | undefined;
  readonly unit: Unit | undefined;
}

/** The unit that a sheet prints, and what it measures. */
export function expectedOf(unit: string, dimension: string | undefined): Expected {
  const known = allUnits.filter((one) => one.symbol === unit);
  const found = known.find((one) => one.dimension === dimension) ?? known[0];
  return { dimension: found?.dimension ?? dimensionNamed(dimension), unit: found };
}

function dimensionNamed(name: string | undefined): Dimension | undefined {
  return allUnits.find((unit) => unit.dimension === name)?.dimension;
}

/**
 * Reads what was typed in a blank: a number with a decimal point or comma, with a unit or in the one that the sheet
 * prints. Where a comma could part thousands, the language of the sheet decides, and where that parts decimals with a
 * point, the value is not guessed.
 */
export function readTypedValue(text: string, { dimension, unit }: Expected, language: SheetLanguage): TypedValue {
  const written = withPoint(text.trim(), language);
  if (dimension === undefined) return { is: 'unreadable', why: 'nothing says which unit it is in' };
  const isBare = /^[-+−–]?[\d.,\s/½¼¾⅛⅜⅝⅞]+$/u.test(written);
  if (isBare && unit === undefined) return { is: 'unreadable', why: 'it has no unit' };
  const symbol = unit === undefined ? '' : unit.gap === 'none' ? unit.symbol : ` ${unit.symbol}`;
  const { quantity, problems } = parseQuantity(isBare ? `${written}${symbol}` : written, dimension);
  const grave = problems.find((problem) => !isHarmless(problem));
  if (quantity === undefined || grave !== undefined)
    return { is: 'unreadable', why: problemWords(grave ?? problems[0]) };
  if (quantity.form !== 'single' || quantity.tolerance.kind !== 'none' || quantity.dual !== null)
    return { is: 'unreadable', why: 'it is no single value' };
  const { value, resolution } = quantity.number;
  return {
    is: 'value',
    number: value,
    unit: findUnit(dimension, quantity.unit.symbol) ?? quantity.unit,
    resolution,
    isBare,
  };
}

/** A comma is a decimal sign in the languages that write it so. */
function withPoint(text: string, language: SheetLanguage): string {
  return language === 'en' ? text : text.replace(/(\d)\.(\d{3})(?=\D|$)/gu, '$1 $2').replace(/(\d),(\d)/gu, '$1.$2');
}

/** Written in another way than documents are, and yet clear. */
function isHarmless(problem: QuantityProblem): boolean {
  if (problem.kind === 'unit-spelling') return !problem.doubtful;
  return problem.kind === 'decimal-comma' && problem.readings.length === 1;
}

function problemWords(problem: QuantityProblem | undefined): string {
  switch (problem?.kind) {
    case undefined:
    case 'number-missing':
      return 'there is no number in it';
    case 'decimal-comma':
      return `it could be ${problem.readings.join(' or ')}`;
    case 'unit-missing':
      return 'it has no unit';
    case 'unit-unknown':
      return `${problem.written} is no unit that is known`;
    case 'unit-ambiguous':
    case 'unit-spelling':
      return `${problem.written} could be more than one unit`;
    case 'wrong-dimension':
      return `${problem.written} measures ${problem.found}, not ${problem.expected}`;
    case 'trailing-text':
      return `"${problem.text}" is more than a value`;
    default:
      return 'it is no single value';
  }
}
