import type { CalculationStep } from '../standards/calculation';
import { evaluate } from './arithmetic';
import { SYMBOL, symbolsIn } from './formulaText';
import type { KnownValue, KnownValues } from './knownValues';

/** Formulas of the field have rounded constants (0.16 for 1/(2π)), so that they come out this close. */
const closeness = 0.005;
/** A sum of more terms than a line holds is not written out. */
const mostTerms = 4;

/**
 * A formula with the numbers in the places of its symbols, as `0.9·640·14.2/1.23`, and sums written out. It is only given
 * where every symbol is known and the numbers come out at the value, powers of ten between the units aside (`·10⁻³`): a
 * line that a reader recalculates in vain is worse than none.
 */
export function filledFormula({ formula, value, unit }: CalculationStep, known: KnownValues): string | undefined {
  const symbols = symbolsIn(formula);
  if (symbols.length === 0 || symbols.some((symbol) => known.latest(symbol) === undefined)) return undefined;
  const exact = writtenOut(formula, known, (one) => String(Math.abs(one.value)));
  const result = exact === undefined ? undefined : evaluate(exact);
  const power = result === undefined ? undefined : powerBetween(value, result);
  const filled = writtenOut(formula, known, ({ shown }) => shown.replaceAll(' ', '').replace(/^−/, ''));
  if (power === undefined || filled === undefined) return undefined;
  // A share of 0.176 is 17.6 %, without a factor.
  if (power === (unit === '%' ? 2 : 0)) return filled;
  return `${isSum(filled) ? `(${filled})` : filled}·10${superscript(power)}`;
}

function writtenOut(formula: string, known: KnownValues, textOf: (one: KnownValue) => string): string | undefined {
  const [, root, signed, body] = /^(√?)Σ (±?)(.+)$/.exec(formula) ?? [];
  if (body === undefined) return fill(formula, textOf, (symbol) => known.latest(symbol));
  const [symbol = ''] = symbolsIn(body);
  const count = known.all(symbol).length;
  if (count === 0 || count > mostTerms || symbolsIn(body).some((one) => known.all(one).length !== count))
    return undefined;
  const terms = Array.from({ length: count }, (_, i) => {
    const term = fill(body, textOf, (one) => known.all(one)[i]);
    const isTaken = signed === '±' && known.signs[i] === -1;
    if (i === 0) return isTaken ? `−${term}` : term;
    return ` ${isTaken ? '−' : '+'} ${term}`;
  });
  return root === '' ? terms.join('') : `√(${terms.join('')})`;
}

function fill(
  formula: string,
  textOf: (one: KnownValue) => string,
  knownOf: (symbol: string) => KnownValue | undefined,
): string {
  return formula.replace(SYMBOL, (symbol) => {
    const one = knownOf(symbol);
    if (one === undefined) return symbol;
    return one.value < 0 ? `(−${textOf(one)})` : textOf(one);
  });
}

function powerBetween(value: number, result: number): number | undefined {
  if (value === 0 || Math.abs(result) < 1e-12) return Math.abs(value - result) < 1e-9 ? 0 : undefined;
  const ratio = value / result;
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
