import { allUnits, fromBase, toBase } from '../../quantity';
import type { Acceptance } from '../acceptance';
import type { FormField } from '../fields/formField';
import type { SheetLanguage } from '../sheet';
import { expectedOf, readTypedValue, type TypedValue } from './typedValue';
import type { Verdict } from './verdict';

type ValueField = Extract<FormField, { kind: 'value' }>;

/** A value that was written down, as a number where it can be read, and what is to be said of it. */
export interface JudgedValue {
  readonly verdict: Verdict;
  readonly number?: number;
  readonly unit?: string;
}

/** Holds what was typed against what is accepted. */
export function judgeValue(text: string, field: ValueField, language: SheetLanguage): JudgedValue {
  const typed = readTypedValue(text, expectedOf(field.unit, field.accepts[0]?.dimension), language);
  if (typed.is === 'unreadable') return { verdict: { is: 'unreadable', why: typed.why } };
  return { verdict: verdictOf(typed, field.accepts), number: typed.number, unit: typed.unit.symbol };
}

function verdictOf(typed: TypedValue & { is: 'value' }, accepts: readonly Acceptance[]): Verdict {
  if (accepts.length === 0) return { is: 'noted' };
  const reasons = accepts.map((one) => ({ one, why: whyOutside(typed, one) }));
  const outside = reasons.filter(({ why }) => why !== undefined);
  if (outside.length === 0) return { is: 'within' };
  if (outside.length === accepts.length) return { is: 'outside', why: outside.map(({ why }) => why).join('; ') };
  const words = reasons.map(
    ({ one, why }) => `${why ?? `within ${one.words}`}${one.when === undefined ? '' : ` when ${one.when}`}`,
  );
  return { is: 'open', why: words.join('; ') };
}

/** Undefined where it is accepted. */
function whyOutside(typed: TypedValue & { is: 'value' }, accept: Acceptance): string | undefined {
  const unit = allUnits.find((one) => one.dimension === accept.dimension && one.symbol === accept.unit);
  if (unit === undefined) return `${accept.unit} is no unit that is known`;
  const value = fromBase(toBase(typed.number, typed.unit), unit);
  // In another unit than the limit was stated in, a value is known to half of its last written place only.
  const step = typed.unit === unit ? 0 : Math.abs(typed.resolution * (typed.unit.factor / unit.factor)) / 2;
  const room = step + 1e-9 * Math.max(Math.abs(value), 1e-9);
  if (accept.kind === 'stated')
    return Math.abs(value - accept.value) <= room ? undefined : `not ${accept.words}, and no tolerance is stated`;
  if (accept.lowest !== undefined && value < accept.lowest - room) return `below ${accept.words}`;
  return accept.highest !== undefined && value > accept.highest + room ? `above ${accept.words}` : undefined;
}
