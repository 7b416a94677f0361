import type { QuantityValue } from '../../model/values';
import {
  boundsOf,
  compareQuantities,
  hasTolerance,
  type Quantity,
  type SingleStatement,
  type Statement,
  type Unit,
  unitsOf,
} from '../../quantity';

/** Whether two torques, their angles aside, contradict each other beyond rounding. One that alone gives a tolerance says more. */
export function torquesDiffer(first: QuantityValue, second: QuantityValue): boolean {
  const [a, b] = [first.reading.quantity, second.reading.quantity];
  if (a === undefined || b === undefined || a.dimension !== b.dimension) return false;
  const [one, other] = [withoutAngle(a), withoutAngle(b)];
  if (!differ(one, other)) return false;
  // Where a value and its double disagree, that is told already; what agrees with the one of them is no second mistake.
  return !hasUnevenDual(first) || differ({ ...one, dual: null }, other);
}

/** The same for a torque that was found in a text. */
export function torqueDiffersFrom(written: Quantity, stated: QuantityValue): boolean {
  const { quantity } = stated.reading;
  return quantity?.dimension === 'torque' && differ(withoutAngle(written), withoutAngle(quantity));
}

export function anglesDiffer(first: SingleStatement, second: SingleStatement): boolean {
  return differ(first, second);
}

/** Units that a torque may be read in but that nobody means by a slip of the pen. */
const UNCOMMON: ReadonlySet<string> = new Set(['dN·m', 'kN·m']);

/** Units in which the number of a torque would be what the other one is. */
export function unitsThatFit(value: QuantityValue, wanted: QuantityValue): readonly Unit[] {
  const [written, other] = [value.reading.quantity, wanted.reading.quantity];
  if (written === undefined || other === undefined || written.dual !== null) return [];
  const statement: Quantity = withoutAngle(written);
  return unitsOf('torque').filter(
    (unit) =>
      unit !== written.unit && !UNCOMMON.has(unit.symbol) && !differ({ ...statement, unit }, withoutAngle(other)),
  );
}

function differ(first: Quantity | Statement, second: Quantity | Statement): boolean {
  return compareQuantities(first, second) === 'different' && !isMiddle(first, second) && !isMiddle(second, first);
}

/** A range around a value that gives no tolerance says more of it. */
function isMiddle(range: Statement, value: Statement): boolean {
  if (range.form !== 'range' || value.form !== 'single' || hasTolerance(value)) return false;
  const [{ nominal }, wanted] = [boundsOf(range), boundsOf(value).nominal];
  return Math.abs(nominal - wanted) <= 1e-9 * Math.abs(wanted);
}

function hasUnevenDual(value: QuantityValue): boolean {
  return value.reading.problems.some((problem) => problem.kind === 'duals-disagree');
}

function withoutAngle(quantity: Quantity): Quantity {
  const { dual } = quantity;
  return { ...torqueAlone(quantity), dual: dual === null ? null : torqueAlone(dual) };
}

function torqueAlone(statement: Statement): Statement {
  if (statement.form !== 'torque-angle') return statement;
  const { dimension, unit, unitSpan, span, number, tolerance } = statement;
  return { form: 'single', dimension, unit, unitSpan, span, number, tolerance };
}
