import type { BuildSet } from '../../builds';
import type { BalanceInstruction, CalculateInstruction, Limit, MeasureInstruction } from '../../model/generated/types';
import type { ByBuild, Prose, QuantityValue } from '../../model/values';
import type { Acceptance } from '../acceptance';
import { capital } from '../sentences/grammar';
import type { Reading } from '../sheet';
import { acceptancesOf, atMostOf } from './acceptances';
import type { BuildContext } from './buildContext';
import { merged, valuesIn } from './valuesIn';

/** The blanks of a measurement or a calculation, with unit and limits. */
export function readingOf(
  one: MeasureInstruction | CalculateInstruction,
  where: BuildSet,
  context: BuildContext,
): Reading | undefined {
  const ref = one.verb === 'measure' ? one.measure : one.calculate;
  if (ref === undefined) return undefined;
  const limit = limitOf(ref.id, context);
  const reading = readingFacts(ref.id, context);
  const accept = one.accept ?? limit?.accept ?? reading?.accept;
  const places = one.verb === 'measure' ? placesOf(one, limit, context) : [];
  return blanks(
    capital(context.names.value(ref.id).name),
    accept,
    // What is only written down is written in the unit of the limit all the same.
    reading?.quantity?.value ?? (limit && limitDimension(limit.accept)),
    limit !== undefined,
    where,
    context,
    places,
  );
}

/** What is left after balancing, in one blank for each plane. */
export function unbalanceOf(one: BalanceInstruction, where: BuildSet, context: BuildContext): Reading | undefined {
  if (one.balance === undefined) return undefined;
  const id = one.balance.id;
  const group = context.procedure.family?.value.balanceGroups?.find((entry) => entry.id.id === id)?.value;
  const name = context.writing.phrases.residualUnbalance(context.names.value(id));
  const planes = group?.planes?.value ?? 1;
  const places = planes > 1 ? context.writing.phrases.planes(planes) : [];
  if (one.accept !== undefined || group?.permissible === undefined) {
    return blanks(name, one.accept, 'unbalance', false, where, context, places);
  }
  const reading = blanks(name, undefined, 'unbalance', false, where, context, places);
  const most = atMostOf(group.permissible, context);
  return { ...reading, limits: atMost(group.permissible, context), ...accepted(most === undefined ? [] : [most]) };
}

/** Limits in words, one for each outcome where they differ; undefined where the value is only written down. */
export function limitsText(
  accept: ByBuild<QuantityValue> | undefined,
  where: BuildSet,
  context: BuildContext,
): string | undefined {
  const cases = merged(valuesIn(accept, where, context.procedure.space), (value) => value?.text ?? '');
  const stated = cases.filter(({ value }) => value !== undefined && value.word === undefined);
  if (stated.length === 0) return undefined;
  return cases
    .map((one) => {
      const value =
        one.value === undefined ? context.writing.phrases.notStated : context.quantities.inBrackets(one.value);
      const clause = context.conditions.clause(one.where, where);
      return clause === undefined ? value : context.writing.phrases.valueWhen(value, clause);
    })
    .join('; ');
}

export function placesOf(one: MeasureInstruction, limit: Limit | undefined, { names }: BuildContext): string[] {
  const places: readonly Prose[] = one.places ?? limit?.places ?? [];
  const [first] = places;
  const count =
    places.length === 1 && first !== undefined && /^\d{1,2}$/u.test(first.text) ? Number(first.text) : undefined;
  if (count === undefined) return places.map((place) => names.name(place) ?? place.text);
  return Array.from({ length: Math.max(1, count) }, (_, index) => String(index + 1));
}

export function limitOf(id: string, { procedure }: BuildContext): Limit | undefined {
  return procedure.family?.value.limits?.find((entry) => entry.id.id === id)?.value;
}

function readingFacts(id: string, { procedure }: BuildContext) {
  const entries = [...(procedure.value.readings ?? []), ...(procedure.family?.value.readings ?? [])];
  return entries.find((entry) => entry.id.id === id)?.value;
}

/** A limit that states nothing for this build says so: it must never look like a value that is only written down. */
function blanks(
  name: string,
  accept: ByBuild<QuantityValue> | undefined,
  dimension: string | undefined,
  isLimit: boolean,
  where: BuildSet,
  context: BuildContext,
  places: readonly string[],
): Reading {
  const cases = valuesIn(accept, where, context.procedure.space);
  const stated = cases.find(({ value }) => value !== undefined && value.word === undefined)?.value;
  const recordOnly = cases.some(({ value }) => value?.word !== undefined);
  const limits =
    limitsText(accept, where, context) ?? (isLimit && !recordOnly ? context.writing.phrases.notStated : undefined);
  const unit = context.quantities.unitFor(
    stated?.reading.quantity?.dimension ?? dimension ?? limitDimension(accept),
    stated,
  );
  const reading = { name, unit, rows: [], places: [...places] };
  return limits === undefined ? reading : { ...reading, limits, ...accepted(acceptancesOf(accept, where, context)) };
}

function accepted(accepts: Acceptance[]): Pick<Reading, 'accepts'> {
  return accepts.length === 0 ? {} : { accepts };
}

function limitDimension(accept: ByBuild<QuantityValue> | undefined): string {
  const value = accept?.is === 'one' ? accept.value : accept?.cases[0]?.value;
  return value?.reading.quantity?.dimension ?? '';
}

/** A permissible value is the most that may be left, however it is written. */
function atMost(value: QuantityValue, { quantities, writing }: BuildContext): string {
  const words = quantities.inBrackets(value);
  return value.reading.quantity?.form === 'single' ? writing.phrases.atMost(words) : words;
}
