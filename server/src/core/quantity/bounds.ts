import type { SingleStatement, Statement, Tolerance, TorqueAngleStatement } from './quantity';
import { toBase, type Unit } from './unit';

/**
 * What a statement allows, in base units of its dimension. Without a tolerance all three are equal; a limit is open on one
 * side, with its limit as `nominal`; the nominal value of a range is its middle; torque and angle give the torque.
 */
export interface Bounds {
  readonly lowest: number;
  readonly nominal: number;
  readonly highest: number;
}

/** The bounds of a statement in base units, without the noise of the last binary digits: 5.1 + 0.3 gives 5.4. */
export function boundsOf(statement: Statement): Bounds {
  const { lowest, nominal, highest } = noisyBounds(statement);
  return { lowest: withoutNoise(lowest), nominal: withoutNoise(nominal), highest: withoutNoise(highest) };
}

function withoutNoise(value: number): number {
  return Number(value.toPrecision(15));
}

function noisyBounds(statement: Statement): Bounds {
  const { unit } = statement;
  switch (statement.form) {
    case 'range': {
      const [lowest, highest] = [toBase(statement.low.value, unit), toBase(statement.high.value, unit)];
      return { lowest, nominal: (lowest + highest) / 2, highest };
    }
    case 'at-most':
      return { ...only(statement.number.value, unit), lowest: Number.NEGATIVE_INFINITY };
    case 'at-least':
      return { ...only(statement.number.value, unit), highest: Number.POSITIVE_INFINITY };
    default:
      return boundsOfTolerance(statement);
  }
}

function boundsOfTolerance(statement: SingleStatement | TorqueAngleStatement): Bounds {
  const { unit, number, tolerance } = statement;
  const { lower, upper } = offsetsOf(number.value, tolerance);
  const lowest = toBase(number.value + lower, unit);
  const highest = toBase(number.value + upper, unit);
  return { lowest, nominal: toBase(number.value, unit), highest };
}

function only(value: number, unit: Unit): Bounds {
  const base = toBase(value, unit);
  return { lowest: base, nominal: base, highest: base };
}

/** The signed offsets that a tolerance allows from `value`, both in the unit of the value. */
export function offsetsOf(value: number, tolerance: Tolerance): { readonly lower: number; readonly upper: number } {
  switch (tolerance.kind) {
    case 'none':
      return { lower: 0, upper: 0 };
    case 'symmetric':
      return around(tolerance.amount.value);
    case 'percent':
      return around((value * tolerance.percent.value) / 100);
    case 'asymmetric':
      return { lower: tolerance.lower.value, upper: tolerance.upper.value };
  }
}

function around(amount: number): { lower: number; upper: number } {
  return { lower: -Math.abs(amount), upper: Math.abs(amount) };
}

/** Whether everything that `inner` allows is allowed by `outer`, rounding noise aside. Both must be of one dimension. */
export function liesWithin(inner: Statement, outer: Statement): boolean {
  if (inner.dimension !== outer.dimension) return false;
  const [a, b] = [boundsOf(inner), boundsOf(outer)];
  const noise = 1e-9 * Math.max(Math.abs(b.nominal), Math.abs(a.nominal));
  return a.lowest >= b.lowest - noise && a.highest <= b.highest + noise;
}
