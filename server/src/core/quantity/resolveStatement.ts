import { convertDifference, convertValue } from './convert';
import { type Dimension, differenceOf } from './dimension';
import type { QuantityProblem, SingleStatement, Statement, Tolerance, WrittenNumber } from './quantity';
import { resolveUnit } from './resolveUnit';
import type { WrittenUnit } from './scanner';
import {
  isPercent,
  type ScannedStatement,
  type ScannedTolerance,
  type ScannedValue,
  writtenUnit,
} from './scanStatement';
import type { Unit } from './unit';
import { differenceUnit, findUnit, usualUnits } from './units';

/** A statement read for one dimension, as far as it is certain. */
export interface ResolvedStatement {
  readonly statement: Statement | null;
  readonly problems: readonly QuantityProblem[];
}

/** Gives a scanned statement its dimension: settles the unit, puts every number in it and reports what does not fit. */
export function resolveStatement(scanned: ScannedStatement, dimension: Dimension): ResolvedStatement {
  return new Resolution(scanned, dimension).run();
}

class Resolution {
  private readonly problems: QuantityProblem[] = [];
  private certain = true;

  constructor(
    private readonly scanned: ScannedStatement,
    private readonly dimension: Dimension,
  ) {}

  run(): ResolvedStatement {
    const { value, upTo, tolerance } = this.scanned;
    for (const each of [value, upTo, ...valuesOf(tolerance)]) this.report(each);
    const written = this.unitOfAll();
    const unit = written === null ? this.missing() : this.resolve(written, this.dimension);
    const statement = unit === null || written === null ? null : this.build(unit, written);
    return { statement: this.certain ? statement : null, problems: this.problems };
  }

  /** A per cent sign after a tolerance is the tolerance's own, unless the quantity is itself a ratio. */
  private unitOfAll(): WrittenUnit | null {
    const written = writtenUnit(this.scanned);
    const relative = this.isRelative() && written === valuesOf(this.scanned.tolerance)[0]?.unit;
    return relative ? null : written;
  }

  private isRelative(): boolean {
    const { tolerance } = this.scanned;
    return this.dimension !== 'ratio' && tolerance?.kind === 'symmetric' && isPercent(tolerance.amount.unit);
  }

  private report(value: ScannedValue | null): void {
    if (value === null) return;
    this.problems.push(...value.scanned.problems);
    this.certain &&= value.scanned.certain;
  }

  private missing(): null {
    const { value, upTo, span } = this.scanned;
    const last = (upTo ?? value).scanned.number.span;
    const insertAt = this.isRelative()
      ? last.end
      : Math.max(last.end, ...valuesOf(this.scanned.tolerance).map((each) => each.scanned.number.span.end));
    const candidates = usualUnits(this.dimension);
    this.problems.push({ kind: 'unit-missing', span: { start: span.start, end: insertAt }, candidates, insertAt });
    return null;
  }

  private resolve(written: WrittenUnit, dimension: Dimension): Unit | null {
    const { unit, problems } = resolveUnit(written, dimension);
    this.problems.push(...problems);
    if (this.isGluedMetre(written, unit)) return this.refuseGluedMetre(written);
    return unit;
  }

  /** `5m` is five thou to some machinists; five metres are written with a space. */
  private isGluedMetre(written: WrittenUnit, unit: Unit | null): boolean {
    return unit?.dimension === 'length' && written.text === 'm' && written.spaces === 0;
  }

  private refuseGluedMetre(written: WrittenUnit): null {
    this.problems.pop();
    const candidates = ['thou', 'mm', 'm'].flatMap((symbol) => findUnit('length', symbol) ?? []);
    this.problems.push({ kind: 'unit-ambiguous', span: written.span, written: written.text, candidates });
    return null;
  }

  private build(unit: Unit, written: WrittenUnit): Statement | null {
    const { dimension } = this;
    const { limit, value, upTo, span, angle } = this.scanned;
    const number = this.reading(value, unit, written);
    const tolerance = this.tolerance(unit, written);
    const unitSpan = written.span;
    if (limit !== 'none') return { form: limit, dimension, unit, unitSpan, span, number };
    if (upTo !== null) {
      const { low, high } = this.ordered(number, this.reading(upTo, unit, written));
      return { form: 'range', dimension, unit, unitSpan, span, low, high };
    }
    if (angle === null) return { form: 'single', dimension, unit, unitSpan, span, number, tolerance };
    const turned = this.angle(angle);
    if (turned === null) return null;
    return { form: 'torque-angle', dimension, unit, unitSpan, span, number, tolerance, angle: turned };
  }

  private angle(scanned: ScannedStatement): SingleStatement | null {
    const { statement, problems } = resolveStatement(scanned, 'angle');
    this.problems.push(...problems);
    return statement?.form === 'single' ? statement : null;
  }

  private ordered(low: WrittenNumber, high: WrittenNumber): { low: WrittenNumber; high: WrittenNumber } {
    if (low.value <= high.value) return { low, high };
    const span = { start: low.span.start, end: high.span.end };
    const unitBetween = this.scanned.value.unit !== null;
    const replacement = unitBetween ? {} : { replacement: `${high.text}..${low.text}` };
    this.problems.push({ kind: 'range-reversed', span, ...replacement });
    return { low: high, high: low };
  }

  private tolerance(unit: Unit, written: WrittenUnit): Tolerance {
    const { tolerance } = this.scanned;
    if (tolerance === null) return { kind: 'none' };
    const { span } = tolerance;
    if (tolerance.kind === 'symmetric') {
      if (this.isRelative()) return { kind: 'percent', percent: this.percent(tolerance.amount), span };
      return { kind: 'symmetric', amount: this.difference(tolerance.amount, unit, written), span };
    }
    const sides = [tolerance.first, tolerance.second].map((side) => this.difference(side, unit, written));
    const [upper, lower] = sides.sort((a, b) => b.value - a.value);
    return upper === undefined || lower === undefined ? { kind: 'none' } : { kind: 'asymmetric', upper, lower, span };
  }

  private percent(value: ScannedValue): WrittenNumber {
    if (value.unit !== null) this.resolve(value.unit, 'ratio');
    return value.scanned.number;
  }

  private reading(value: ScannedValue, unit: Unit, main: WrittenUnit): WrittenNumber {
    const own = this.ownUnit(value, main, this.dimension);
    return own === null || own.factor === unit.factor
      ? value.scanned.number
      : this.mixed(value, unit, convertValue(value.scanned.number.value, own, unit));
  }

  private difference(value: ScannedValue, unit: Unit, main: WrittenUnit): WrittenNumber {
    const own = this.ownUnit(value, main, differenceOf(this.dimension));
    const same = own === null || own.factor === differenceUnit(unit).factor;
    return same
      ? value.scanned.number
      : this.mixed(value, unit, convertDifference(value.scanned.number.value, own, unit));
  }

  /** The unit right after one number, where it is not the one that the whole statement is in. */
  private ownUnit(value: ScannedValue, main: WrittenUnit, dimension: Dimension): Unit | null {
    if (value.unit === null || value.unit === main) return null;
    const unit = this.resolve(value.unit, dimension);
    this.certain &&= unit !== null;
    return unit;
  }

  /** One statement, one unit (SI Brochure): the number is read in the unit of the whole, and can be written so. */
  private mixed(value: ScannedValue, unit: Unit, inUnit: number): WrittenNumber {
    const { number } = value.scanned;
    const span = { start: number.span.start, end: value.unit?.span.end ?? number.span.end };
    const text = String(Number(inUnit.toPrecision(12)));
    const replacement = /e/.test(text) ? {} : { replacement: `${text} ${unit.symbol}` };
    this.problems.push({ kind: 'units-mixed', span, unit, inUnit, ...replacement });
    const places = text.split('.')[1]?.length ?? 0;
    return { text, value: inUnit, resolution: 10 ** -places, notation: 'decimal', span: number.span };
  }
}

function valuesOf(tolerance: ScannedTolerance | null): readonly ScannedValue[] {
  if (tolerance === null) return [];
  return tolerance.kind === 'symmetric' ? [tolerance.amount] : [tolerance.first, tolerance.second];
}
