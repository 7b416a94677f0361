import type { CalculationStep } from '../standards/calculation';
import { filledFormula } from './filledFormula';
import { KnownValues } from './knownValues';
import { shownNumber } from './shownNumber';

/** One line of a calculation in pieces: `A_s`, then what it equals, the value last. */
export interface CalculationLine {
  readonly symbol: string;
  /** What the symbol stands for. */
  readonly name: string;
  /** Formula, formula with numbers, value: as many of them as say something. */
  readonly equals: readonly string[];
  /** Where a value is looked up, as `ISO 898-1:2013`; '' where it is given or worked out. */
  readonly source: string;
  readonly isGiven: boolean;
}

/**
 * The lines of a calculation with the numbers set into the formulas. A later value of a symbol takes the place of an earlier
 * one; a formula that is gone through again is not spelt out again.
 */
export function calculationLines(steps: readonly CalculationStep[]): CalculationLine[] {
  const known = new KnownValues();
  const told = new Set<string>();
  return steps.map((step) => {
    const law = `${step.symbol} = ${step.formula}`;
    const line = lineOf(step, known, told.has(law));
    known.add(step, numberOf(step));
    told.add(law);
    return line;
  });
}

function lineOf(step: CalculationStep, known: KnownValues, isTold: boolean): CalculationLine {
  const { symbol, name, formula, unit } = step;
  const isGiven = formula === 'given';
  const value = unit === '' ? numberOf(step) : `${numberOf(step)}${gap(unit)}${unit}`;
  if (isGiven || isSource(formula)) {
    return { symbol, name, equals: [value], source: isGiven ? '' : formula, isGiven };
  }
  const filled = filledFormula(step, known);
  const worked = filled === undefined ? [formula, value] : [...(isTold ? [] : [formula]), filled, value];
  return { symbol, name, equals: worked, source: '', isGiven };
}

function numberOf({ value, unit, formula }: CalculationStep): string {
  return shownNumber(value, unit, formula === 'given' || isSource(formula));
}

/** A formula has signs of arithmetic and no words; anything else says where the value is looked up. */
function isSource(formula: string): boolean {
  return /\b(?:ISO|ASME|VDI|SAE|DIN|EN|ASTM)\b|\p{L}{5,}/u.test(formula);
}

function gap(unit: string): string {
  return /^[°′″]$/.test(unit) ? '' : ' ';
}

/** `F = a·b = 2·3 = 6 N` in as few lines as a width allows, those after the first below the sign of equality. */
export function equationLines({ symbol, equals, source }: CalculationLine, width: number): string[] {
  const cited = source === '' ? '' : `  (${source})`;
  const whole = `${[symbol, ...equals].join(' = ')}${cited}`;
  if (lengthOf(whole) <= width) return [whole];
  const indent = ' '.repeat(lengthOf(symbol));
  const lines = [symbol];
  for (const [i, piece] of equals.entries()) {
    const last = lines.pop() ?? '';
    const together = `${last} = ${piece}`;
    if (i === 0 || lengthOf(together) <= width) lines.push(together);
    else lines.push(last, `${indent} = ${piece}`);
  }
  return [...lines.slice(0, -1), `${lines.at(-1)}${cited}`];
}

/** Characters as a terminal shows them, however they are encoded. */
export function lengthOf(text: string): number {
  return [...text].length;
}
