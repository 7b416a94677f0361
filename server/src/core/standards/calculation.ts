/** One line of a calculation as it would be written on paper: `A_s = π/4·(d − 0.9382·P)² = 14.2 mm²`. */
export interface CalculationStep {
  /** The symbol of the field, for example `A_s`. */
  readonly symbol: string;
  /** What the symbol stands for, in words. */
  readonly name: string;
  /** The formula with symbols only, `given` for what the calculation starts from, or the standard that a value is looked up in. */
  readonly formula: string;
  /** Unrounded: how many places are shown is the business of whoever shows it. */
  readonly value: number;
  /** Symbol of the unit; an empty text for a plain number. */
  readonly unit: string;
}

/** A value with the way that led to it; the last step is the value itself. */
export interface Worked {
  readonly value: number;
  readonly unit: string;
  readonly steps: readonly CalculationStep[];
}

/** Makes one step; the order of the arguments is the order of reading. */
export function step(symbol: string, name: string, formula: string, value: number, unit: string): CalculationStep {
  return { symbol, name, formula, value, unit };
}

/** Closes a calculation: its value is that of the last step. */
export function worked(before: readonly CalculationStep[], last: CalculationStep): Worked {
  return { value: last.value, unit: last.unit, steps: [...before, last] };
}
