import { type CalculationStep, step } from './calculation';

/** A value that the documents state, as a line of the working. */
export function given(symbol: string, name: string, value: number, unit: string): CalculationStep {
  return step(symbol, name, 'given', value, unit);
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
