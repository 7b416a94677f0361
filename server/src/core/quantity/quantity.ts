import type { Span } from '../text/span';
import type { Dimension } from './dimension';
import type { Unit } from './unit';

/** A number as someone wrote it. */
export interface WrittenNumber {
  /** The characters as written, sign included. */
  readonly text: string;
  readonly value: number;
  /** One unit in the last written place: 0.01 for `5.10`, 1 for `5`; 1/64 for a fraction of an inch. */
  readonly resolution: number;
  readonly notation: 'decimal' | 'fraction';
  readonly span: Span;
}

/** By how much a value may differ. Amounts are in the unit of the value. */
export type Tolerance =
  | { readonly kind: 'none' }
  | { readonly kind: 'symmetric'; readonly amount: WrittenNumber; readonly span: Span }
  | { readonly kind: 'percent'; readonly percent: WrittenNumber; readonly span: Span }
  /** Signed offsets from the value: `upper` is the greater one. */
  | { readonly kind: 'asymmetric'; readonly upper: WrittenNumber; readonly lower: WrittenNumber; readonly span: Span };

interface InUnit {
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly unitSpan: Span;
  readonly span: Span;
}

/** `5.1 N·m`, `5.1 ± 0.3 N·m`. */
export interface SingleStatement extends InUnit {
  readonly form: 'single';
  readonly number: WrittenNumber;
  readonly tolerance: Tolerance;
}

/** `4.8..5.4 N·m`; `low` is never above `high`. */
export interface RangeStatement extends InUnit {
  readonly form: 'range';
  readonly low: WrittenNumber;
  readonly high: WrittenNumber;
}

/** `≤ 0.05 mm`, `≥ 120 °C`. */
export interface LimitStatement extends InUnit {
  readonly form: 'at-most' | 'at-least';
  readonly number: WrittenNumber;
}

/** `2 N·m + 110°`: the torque first, then the angle. */
export interface TorqueAngleStatement extends InUnit {
  readonly form: 'torque-angle';
  readonly number: WrittenNumber;
  readonly tolerance: Tolerance;
  readonly angle: SingleStatement;
}

/** What is said of one thing measured, in one unit. */
export type Statement = SingleStatement | RangeStatement | LimitStatement | TorqueAngleStatement;

/** A statement, and the same once more in another unit where one was written in brackets. */
export type Quantity = Statement & { readonly dual: Statement | null };

/** Something wrong with a written quantity. `span` is what to underline; `replacement`, where there is one, is right beyond doubt for it. */
export type QuantityProblem = { readonly span: Span; readonly replacement?: string } & (
  | { readonly kind: 'number-missing' }
  /** `insertAt` is where a space and the unit would go. */
  | { readonly kind: 'unit-missing'; readonly candidates: readonly Unit[]; readonly insertAt: number }
  | { readonly kind: 'unit-unknown'; readonly written: string; readonly nearest: readonly Unit[] }
  | { readonly kind: 'unit-ambiguous'; readonly written: string; readonly candidates: readonly Unit[] }
  /** Understood, but not the standard symbol, or not one space before it; where doubtful, the replacement is to be confirmed. */
  | {
      readonly kind: 'unit-spelling';
      readonly written: string;
      readonly unit: Unit;
      readonly reason: 'symbol' | 'space';
      readonly doubtful: boolean;
    }
  | {
      readonly kind: 'wrong-dimension';
      readonly written: string;
      readonly found: Dimension;
      readonly expected: Dimension;
      readonly candidates: readonly Unit[];
    }
  /** A comma in a number; `readings` are the numbers it may stand for, with a decimal point. */
  | { readonly kind: 'decimal-comma'; readonly written: string; readonly readings: readonly string[] }
  /** Two units in one statement; `inUnit` is the number converted to the statement's unit. */
  | { readonly kind: 'units-mixed'; readonly unit: Unit; readonly inUnit: number }
  /** The value in brackets is not the first one converted; `converted` is, to the rounding of the one in brackets.
   * `rightIn` are the units in which the written number would be right. */
  | { readonly kind: 'duals-disagree'; readonly converted: string; readonly rightIn: readonly Unit[] }
  | { readonly kind: 'range-reversed' }
  | { readonly kind: 'trailing-text'; readonly text: string }
);

/** What reading a text as a quantity gives: the quantity as far as it is certain, and what is wrong. */
export interface QuantityReading {
  readonly quantity?: Quantity;
  readonly problems: readonly QuantityProblem[];
}

/** Whether a deviation is allowed for: a tolerance, a range or a limit. With torque and angle, both need one. */
export function hasTolerance(statement: Statement): boolean {
  switch (statement.form) {
    case 'single':
      return statement.tolerance.kind !== 'none';
    case 'torque-angle':
      return statement.tolerance.kind !== 'none' && hasTolerance(statement.angle);
    default:
      return true;
  }
}
