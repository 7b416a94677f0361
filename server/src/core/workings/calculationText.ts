import type { CalculationStep } from '../standards/calculation';
import { filledFormula } from './filledFormula';
import { isGiven } from './formulaText';
import { givenFirst } from './givenFirst';
import { KnownValues } from './knownValues';
import { shownNumber } from './shownNumber';

/** One line of a calculation in pieces: `A_s`, then what it equals, the value last. */
export interface CalculationLine {
  readonly symbol: string;
  /** What the symbol stands for; '' where it is given another value, its name having been told. */
  readonly name: string;
  /** Formula, formula with numbers, value: as many of them as say something. */
  readonly equals: readonly string[];
  /** Where a value is looked up, as `ISO 898-1:2013`; '' where it is stated or worked out. */
  readonly source: string;
  /** It is where the calculation starts from: stated, or looked up. */
  readonly isGiven: boolean;
}

/**
 * The lines of a calculation with the numbers set into the formulas. A later value of a symbol takes the place of an earlier
 * one; a formula that is gone through again is not spelt out again.
 */
export function calculationLines(steps: readonly CalculationStep[]): CalculationLine[] {
  const known = new KnownValues();
  const told = new Set<string>();
  return givenFirst(steps).map((step) => {
    const law = `${step.symbol} = ${isGiven(step) ? step.name : step.formula}`;
    const line = lineOf(step, known, told.has(law));
    known.add(step, numberOf(step));
    told.add(law);
    return line;
  });
}

function lineOf(step: CalculationStep, known: KnownValues, isTold: boolean): CalculationLine {
  const { symbol, name, formula, unit } = step;
  const value = unit === '' ? numberOf(step) : `${numberOf(step)}${gap(unit)}${unit}`;
  if (isGiven(step)) {
    const source = formula === 'given' ? '' : formula;
    return { symbol, name: isTold ? '' : name, equals: [value], source, isGiven: true };
  }
  const filled = filledFormula(step, known);
  const equals = filled === undefined ? [formula, value] : [...(isTold ? [] : [formula]), filled, value];
  return { symbol, name, equals, source: '', isGiven: false };
}

function numberOf(step: CalculationStep): string {
  return shownNumber(step.value, step.unit, isGiven(step));
}

function gap(unit: string): string {
  return /^[°′″]$/.test(unit) ? '' : ' ';
}

/** `F = a·b = 2·3 = 6 N` in as few lines as a width allows, those after the first below the sign of equality. */
export function equationLines({ symbol, equals }: CalculationLine, width: number): string[] {
  const indent = ' '.repeat(lengthOf(symbol));
  const lines = [symbol];
  for (const [i, piece] of equals.entries()) {
    const last = lines.pop() ?? '';
    const together = `${last} = ${piece}`;
    if (i === 0 || lengthOf(together) <= width) lines.push(together);
    else lines.push(last, `${indent} = ${piece}`);
  }
  return lines;
}

/** Characters as a terminal shows them, however they are encoded. */
export function lengthOf(text: string): number {
  return [...text].length;
}
