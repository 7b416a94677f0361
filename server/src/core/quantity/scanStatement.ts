import type { Span } from '../text/span';
import type { Scanner, WrittenUnit } from './scanner';
import type { ScannedNumber } from './writtenNumber';

/** A number with the unit that stands right after it, if one does. No dimension is known yet. */
export interface ScannedValue {
  readonly scanned: ScannedNumber;
  readonly unit: WrittenUnit | null;
}

export type ScannedTolerance =
  | { readonly kind: 'symmetric'; readonly amount: ScannedValue; readonly span: Span }
  | { readonly kind: 'asymmetric'; readonly first: ScannedValue; readonly second: ScannedValue; readonly span: Span };

/** The shape of a statement as written: values, tolerance, limit sign, angle. */
export interface ScannedStatement {
  readonly limit: 'none' | 'at-most' | 'at-least';
  readonly value: ScannedValue;
  /** The upper end of a range. */
  readonly upTo: ScannedValue | null;
  readonly tolerance: ScannedTolerance | null;
  /** The unit at the very end of `5.1 ± 6 % N·m`. */
  readonly lastUnit: WrittenUnit | null;
  readonly angle: ScannedStatement | null;
  readonly span: Span;
}

/** A whole text: the statement, the one in brackets, and where reading stopped. */
export interface ScannedQuantity {
  readonly statement: ScannedStatement;
  readonly dual: ScannedStatement | null;
  readonly end: number;
}

/** Scans a statement and its double in brackets; null where there is no number. */
export function scanQuantity(scanner: Scanner): ScannedQuantity | null {
  const first = scanStatement(scanner);
  if (first === null) return null;
  // The double may stand before the angle or after it: `2 N·m (18 lbf·in) + 110°`.
  const early = scanDual(scanner);
  const statement = withAngle(scanner, first);
  const dual = early ?? scanDual(scanner);
  return { statement, dual, end: scanner.end };
}

function scanDual(scanner: Scanner): ScannedStatement | null {
  const back = scanner.mark();
  if (scanner.take('bracketOpen')) {
    const plain = scanStatement(scanner);
    const statement = plain === null ? null : withAngle(scanner, plain);
    const meant = statement !== null && (scanner.setting === 'value' || writtenUnit(statement) !== null);
    if (meant && scanner.take('bracketClose')) return statement;
  }
  scanner.goTo(back);
  return null;
}

/** Adds `+ 110°` or `then 110 deg`; anything else after a plus is left for the caller to report. */
function withAngle(scanner: Scanner, statement: ScannedStatement): ScannedStatement {
  const back = scanner.mark();
  if (scanner.take('angleJoin')) {
    const angle = scanStatement(scanner);
    if (angle !== null && mayBeAngle(angle, scanner)) {
      return { ...statement, angle, span: { start: statement.span.start, end: scanner.end } };
    }
  }
  scanner.goTo(back);
  return statement;
}

function mayBeAngle(angle: ScannedStatement, scanner: Scanner): boolean {
  const unit = writtenUnit(angle);
  if (angle.limit !== 'none' || angle.upTo !== null) return false;
  if (unit === null || unit.meanings.length === 0) return scanner.setting === 'value';
  return unit.meanings.some((meaning) => meaning.dimension === 'angle');
}

/** The unit that the statement as a whole is in, wherever it stands; null where none is written. */
export function writtenUnit(statement: ScannedStatement): WrittenUnit | null {
  const { value, upTo, tolerance, lastUnit } = statement;
  return value.unit ?? lastUnit ?? upTo?.unit ?? unitOfTolerance(tolerance);
}

function unitOfTolerance(tolerance: ScannedTolerance | null): WrittenUnit | null {
  if (tolerance === null) return null;
  return tolerance.kind === 'symmetric' ? tolerance.amount.unit : (tolerance.second.unit ?? tolerance.first.unit);
}

/** Whether the unit can be read as a ratio, so that a tolerance in it is relative. */
export function isPercent(unit: WrittenUnit | null): boolean {
  return unit?.meanings.some((meaning) => meaning.dimension === 'ratio') ?? false;
}

/** Scans one statement without angle or double; null, and nothing taken, where there is no number. */
export function scanStatement(scanner: Scanner): ScannedStatement | null {
  const back = scanner.mark();
  scanner.skipSpace();
  const start = scanner.position;
  const sign = scanner.take('atMost') ? 'at-most' : scanner.take('atLeast') ? 'at-least' : 'none';
  const value = scanValue(scanner);
  if (value === null) {
    scanner.goTo(back);
    return null;
  }
  const tolerance = sign === 'none' ? scanTolerance(scanner) : null;
  const upTo = sign === 'none' && tolerance === null ? scanUpTo(scanner, value) : null;
  const lastUnit = value.unit === null && isPercent(unitOfTolerance(tolerance)) ? scanner.unit() : null;
  const limit = sign === 'none' && tolerance === null && upTo === null ? scanLimitAfter(scanner, value) : sign;
  return { limit, value, upTo, tolerance, lastUnit, angle: null, span: { start, end: scanner.end } };
}

/** `0.05 mm max`: only after a unit, since `5 min` is five minutes. */
function scanLimitAfter(scanner: Scanner, value: ScannedValue): ScannedStatement['limit'] {
  if (value.unit === null) return 'none';
  if (scanner.take('maxAfter')) return 'at-most';
  return scanner.take('minAfter') ? 'at-least' : 'none';
}

function scanValue(scanner: Scanner): ScannedValue | null {
  const scanned = scanner.number();
  return scanned === null ? null : { scanned, unit: scanner.unit() };
}

function scanUpTo(scanner: Scanner, low: ScannedValue): ScannedValue | null {
  const back = scanner.mark();
  const upTo = scanner.take('range') ? scanValue(scanner) : null;
  // In prose `5 mm to 3 of them` is no range: the unit must come last.
  const meant = upTo !== null && (scanner.setting === 'value' || upTo.unit !== null || low.unit === null);
  if (meant) return upTo;
  scanner.goTo(back);
  return null;
}

function scanTolerance(scanner: Scanner): ScannedTolerance | null {
  const back = scanner.mark();
  scanner.skipSpace();
  const start = scanner.position;
  const tolerance = scanner.take('plusMinus') ? scanSymmetric(scanner, start) : scanAsymmetric(scanner, start);
  if (tolerance === null) scanner.goTo(back);
  return tolerance;
}

function scanSymmetric(scanner: Scanner, start: number): ScannedTolerance | null {
  const amount = scanValue(scanner);
  return amount === null ? null : { kind: 'symmetric', amount, span: { start, end: scanner.end } };
}

function scanAsymmetric(scanner: Scanner, start: number): ScannedTolerance | null {
  const first = scanOffset(scanner);
  if (first === null) return null;
  const joined = scanner.take('offsetJoin');
  const second = scanOffset(scanner);
  if (second === null) return null;
  if (!joined && signOf(first) === signOf(second)) return null;
  if (![first, second].some(isSigned)) return null;
  return { kind: 'asymmetric', first, second, span: { start, end: scanner.end } };
}

/** One side of `+0.3/-0.1` or `0/-0.05`. */
function scanOffset(scanner: Scanner): ScannedValue | null {
  const value = scanValue(scanner);
  return value !== null && (isSigned(value) || value.scanned.number.value === 0) ? value : null;
}

function isSigned(value: ScannedValue): boolean {
  return signOf(value) !== 'none';
}

function signOf(value: ScannedValue): '+' | '-' | 'none' {
  const first = value.scanned.number.text[0];
  return first === '+' || first === '-' ? first : 'none';
}
