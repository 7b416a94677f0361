/**
 * One line of a calculation as data, so that the working can be shown: a value that was given, one that was looked up in a
 * published table, or one that was calculated by a formula. The unit is a symbol, `1` for a plain number.
 */
export type WorkingStep =
  | { readonly kind: 'given'; readonly name: string; readonly value: number; readonly unit: string }
  | {
      readonly kind: 'looked-up';
      readonly name: string;
      readonly value: number;
      readonly unit: string;
      readonly source: string;
    }
  | {
      readonly kind: 'calculated';
      readonly name: string;
      readonly value: number;
      readonly unit: string;
      readonly formula: string;
    };

/** A value that the documents state. */
export function given(name: string, value: number, unit: string): WorkingStep {
  return { kind: 'given', name, value: withoutNoise(value), unit };
}

/** A value from a published table or a rule, with where it stands. */
export function lookedUp(name: string, value: number, unit: string, source: string): WorkingStep {
  return { kind: 'looked-up', name, value: withoutNoise(value), unit, source };
}

/** A value calculated from earlier steps; the formula is in the usual symbols, for example `δ = d_shaft − d_bore`. */
export function calculated(name: string, formula: string, value: number, unit: string): WorkingStep {
  return { kind: 'calculated', name, value: withoutNoise(value), unit, formula };
}

/**
 * A value without the noise of the last binary digits: 50 − 49.991 gives 0.009. Twelve digits are far beyond every
 * instrument, and short of where sums of decimal fractions begin to differ.
 */
export function withoutNoise(value: number): number {
  return Number(value.toPrecision(12));
}

/** Whether every value is a finite number above zero, which lengths, masses and coefficients have to be. */
export function arePositive(...values: readonly number[]): boolean {
  return values.every((value) => Number.isFinite(value) && value > 0);
}
