import { boundsOf, offsetsOf } from './bounds';
import { convertStatement } from './convert';
import {
  hasTolerance,
  type Quantity,
  type SingleStatement,
  type Statement,
  type TorqueAngleStatement,
  type WrittenNumber,
} from './quantity';
import { fromBase } from './unit';

/** What two quantities say of each other, rounding aside. One says more where it alone gives a tolerance. */
export type Comparison = 'same' | 'first-says-more' | 'second-says-more' | 'different';

/** A number that should have been written, and the one that was. */
type Check = readonly [expected: number, written: WrittenNumber];

/**
 * Whether `second` is `first` converted and rounded to the last written place of `second`. Where one leaves the tolerance
 * or the angle out, only what both say is compared.
 */
export function isRoundingOf(second: Statement, first: Statement): boolean {
  return agrees(first, second, (written) => written.resolution / 2);
}

/**
 * Compares two statements about one thing, made independently. In units that are a power of ten apart no rounding is
 * needed, so none is allowed: 5 N·m and 5.1 N·m differ.
 */
export function compareQuantities(first: Quantity | Statement, second: Quantity | Statement): Comparison {
  const [a, b] = inSameUnits(first, second);
  if (isTorqueAngle(a) !== isTorqueAngle(b) || isLimit(a) !== isLimit(b)) return 'different';
  const exact = isPowerOfTen(a.unit.factor / b.unit.factor) && a.unit.zeroAt === b.unit.zeroAt;
  const room = exact ? () => 0 : (written: WrittenNumber) => written.resolution / 2;
  if (!agrees(a, b, room) && !agrees(b, a, room)) return 'different';
  const [inFirst, inSecond] = [hasTolerance(a), hasTolerance(b)];
  if (inFirst === inSecond) return 'same';
  return inFirst ? 'first-says-more' : 'second-says-more';
}

/** Whether two quantities are the same statement, tolerances included, rounding of converted values aside. */
export function sameQuantity(first: Quantity | Statement, second: Quantity | Statement): boolean {
  return compareQuantities(first, second) === 'same';
}

/** Of a value and its double, the pair in one unit where there is one: it needs no rounding. */
function inSameUnits(first: Quantity | Statement, second: Quantity | Statement): readonly [Statement, Statement] {
  for (const a of bothOf(first)) {
    for (const b of bothOf(second)) if (a.unit === b.unit) return [a, b];
  }
  return [first, second];
}

function bothOf(quantity: Quantity | Statement): readonly Statement[] {
  return 'dual' in quantity && quantity.dual !== null ? [quantity, quantity.dual] : [quantity];
}

function agrees(first: Statement, second: Statement, room: (written: WrittenNumber) => number): boolean {
  if (first.dimension !== second.dimension) return false;
  const checks = checksOf(convertStatement(first, second.unit, null), second);
  return (
    checks?.every(([expected, written]) => {
      const noise = 1e-9 * Math.max(Math.abs(expected), written.resolution);
      return Math.abs(expected - written.value) <= room(written) + noise;
    }) ?? false
  );
}

/** What must be equal for the second to repeat the first, both in one unit; null where their forms never agree. */
function checksOf(first: Statement, second: Statement): readonly Check[] | null {
  if (isToleranced(first) && isToleranced(second)) return tolerancedChecks(first, second);
  if (first.form === 'range' && second.form === 'range')
    return [
      [first.low.value, second.low],
      [first.high.value, second.high],
    ];
  if (second.form === 'range') return hasTolerance(first) ? rangeChecks(first, second) : null;
  if (first.form === 'range')
    return isToleranced(second) && second.tolerance.kind !== 'none' ? boundChecks(first, second) : null;
  const bothLimits = isLimit(first) && isLimit(second);
  if (bothLimits && first.form !== second.form) return null;
  return bothLimits || !hasTolerance(isLimit(first) ? second : first) ? [[first.number.value, second.number]] : null;
}

function rangeChecks(first: Statement, second: Extract<Statement, { form: 'range' }>): readonly Check[] | null {
  if (!isToleranced(first) || isTorqueAngle(first)) return null;
  const { lowest, highest } = boundsOf(first);
  return [
    [fromBase(lowest, first.unit), second.low],
    [fromBase(highest, first.unit), second.high],
  ];
}

/** A range against a value with tolerance: its ends must be the value's bounds, to the value's last place. */
function boundChecks(
  first: Extract<Statement, { form: 'range' }>,
  second: SingleStatement | TorqueAngleStatement,
): readonly Check[] | null {
  if (isTorqueAngle(second)) return null;
  const { lower, upper } = offsetsOf(second.number.value, second.tolerance);
  const at = (offset: number): WrittenNumber => ({ ...second.number, value: second.number.value + offset });
  return [
    [first.low.value, at(lower)],
    [first.high.value, at(upper)],
  ];
}

function tolerancedChecks(
  first: SingleStatement | TorqueAngleStatement,
  second: SingleStatement | TorqueAngleStatement,
): readonly Check[] {
  const checks: Check[] = [[first.number.value, second.number], ...toleranceChecks(first, second)];
  if (first.form === 'torque-angle' && second.form === 'torque-angle') {
    // Angles are compared as they are: turning by degrees needs no conversion in practice.
    checks.push(...(checksOf(convertStatement(first.angle, second.angle.unit, null), second.angle) ?? []));
  }
  return checks;
}

function toleranceChecks(
  first: SingleStatement | TorqueAngleStatement,
  second: SingleStatement | TorqueAngleStatement,
): readonly Check[] {
  const [from, to] = [first.tolerance, second.tolerance];
  if (from.kind === 'none' || to.kind === 'none') return [];
  if (from.kind === 'percent' && to.kind === 'percent') return [[from.percent.value, to.percent]];
  const { lower, upper } = offsetsOf(first.number.value, from);
  switch (to.kind) {
    case 'symmetric':
      return [
        [upper, to.amount],
        [-lower, to.amount],
      ];
    case 'asymmetric':
      return [
        [upper, to.upper],
        [lower, to.lower],
      ];
    case 'percent': {
      const percent = (offset: number) => Math.abs((offset / first.number.value) * 100);
      return [
        [percent(upper), to.percent],
        [percent(lower), to.percent],
      ];
    }
  }
}

function isToleranced(statement: Statement): statement is SingleStatement | TorqueAngleStatement {
  return statement.form === 'single' || statement.form === 'torque-angle';
}

function isTorqueAngle(statement: Statement): statement is TorqueAngleStatement {
  return statement.form === 'torque-angle';
}

function isLimit(statement: Statement): statement is Extract<Statement, { form: 'at-most' | 'at-least' }> {
  return statement.form === 'at-most' || statement.form === 'at-least';
}

function isPowerOfTen(ratio: number): boolean {
  const exponent = Math.log10(ratio);
  return Math.abs(exponent - Math.round(exponent)) < 1e-12;
}
