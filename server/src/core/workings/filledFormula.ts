import type { CalculationStep } from '../standards/calculation';
import { evaluate } from './arithmetic';

/** A value by its symbol: unrounded, and as it is shown. */
export interface KnownValue {
  readonly value: number;
  readonly shown: string;
}

/** Formulas of the field have rounded constants (0.16 for 1/(2π)), so that they come out this close. */
const closeness = 0.005;

/**
 * A formula with the numbers in the places of its symbols, as `0.9·640·14.2/1.23`. It is only given where every symbol is
 * known and the numbers come out at the value, powers of ten between the units aside (`·10⁻³`): a line that a reader
 * recalculates in vain is worse than none.
 */
export function filledFormula(
  { formula, value }: CalculationStep,
  known: ReadonlyMap<string, KnownValue>,
): string | undefined {
  const symbols = symbolsIn(formula);
  if (symbols.length === 0 || symbols.some((symbol) => !known.has(symbol))) return undefined;
  const exact = evaluate(fill(formula, known, (one) => String(Math.abs(one.value))));
  const power = exact === undefined ? undefined : powerBetween(value, exact);
  if (power === undefined) return undefined;
  const filled = fill(formula, known, ({ shown }) => shown.replaceAll(' ', '').replace(/^−/, ''));
  if (power === 0) return filled;
  return `${isSum(filled) ? `(${filled})` : filled}·10${superscript(power)}`;
}

/** The symbols in a formula; π is a number. */
function symbolsIn(formula: string): string[] {
  return (formula.match(SYMBOL) ?? []).filter((symbol) => symbol !== 'π');
}

const SYMBOL = /\p{L}[\p{L}\p{Nd}_]*(?:\.\d+)?/gu;

function fill(formula: string, known: ReadonlyMap<string, KnownValue>, textOf: (one: KnownValue) => string): string {
  return formula.replace(SYMBOL, (symbol) => {
    const one = known.get(symbol);
    if (one === undefined) return symbol;
    return one.value < 0 ? `(−${textOf(one)})` : textOf(one);
  });
}

function powerBetween(value: number, exact: number): number | undefined {
  if (value === 0 || exact === 0) return Math.abs(value - exact) < 1e-9 ? 0 : undefined;
  const ratio = value / exact;
  if (ratio < 0) return undefined;
  const power = Math.round(Math.log10(ratio));
  return Math.abs(ratio / 10 ** power - 1) <= closeness ? power : undefined;
}

/** Whether a sign of a sum stands outside of all brackets. */
function isSum(expression: string): boolean {
  let bare = expression;
  for (let last = ''; last !== bare; ) {
    last = bare;
    bare = bare.replace(/\([^()]*\)/g, '');
  }
  return /[+−]/.test(bare);
}

function superscript(power: number): string {
  const digits = [...String(Math.abs(power))].map((digit) => '⁰¹²³⁴⁵⁶⁷⁸⁹'.charAt(Number(digit))).join('');
  return power < 0 ? `⁻${digits}` : digits;
}
