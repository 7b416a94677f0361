import { heldValues } from '../analysis/heldValues';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { QuantityValue, Ref } from '../model/values';
import { boundsOf } from '../quantity';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Warmed } from './fitSurroundings';
import { type Heating, type TemperedPart, temperatureTrace } from './fitTrace';

/** Something that gets warmer than it stands. */
export interface Overheated {
  readonly source: TemperedPart;
  readonly warmed: Warmed;
  /** What it stands at most, in °C, with the value that states it. */
  readonly stands: number;
  readonly stated: QuantityValue;
  readonly document: SyntaxDocument;
  /** How warm it may get, in °C; undefined where the instruction names no highest temperature. */
  readonly reaches: number | undefined;
  /** The instruction that fits the hot part, where that is what brings them together. */
  readonly at: Ref | undefined;
  readonly where: BuildSet;
}

interface Stands {
  readonly value: QuantityValue;
  readonly where: BuildSet;
  readonly document: SyntaxDocument;
}

const remembered = new WeakMap<ProcedureView, readonly Overheated[]>();

/** Everything that a procedure heats above what the family or the stores say that it stands; each place once. */
export function overheated(procedure: ProcedureView): readonly Overheated[] {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const once: Overheated[] = [];
  const byTemperature = new Map<QuantityValue, Overheated[]>();
  for (const one of temperatureTrace(procedure).heatings.flatMap((heating) => tooHotBy(procedure, heating))) {
    const earlier = byTemperature.get(one.source.until) ?? [];
    const told = earlier.filter(({ stated }) => stated === one.stated);
    const where = one.where.minus(procedure.space.union(told.map((other) => other.where)));
    if (where.isEmpty) continue;
    const place = where === one.where ? one : { ...one, where };
    once.push(place);
    byTemperature.set(one.source.until, [...earlier, place]);
  }
  remembered.set(procedure, once);
  return once;
}

/** A heating belongs to one walk of one family; what consumables stand, the stores say. */
const byHeating = new WeakMap<Heating, { readonly consumables: unknown; readonly all: readonly Overheated[] }>();

function tooHotBy(procedure: ProcedureView, heating: Heating): readonly Overheated[] {
  const { consumables } = procedure;
  const known = byHeating.get(heating);
  if (known?.consumables === consumables) return known.all;
  const { source, warmed, at } = heating;
  const all = warmed.flatMap((one) => tooHot(procedure, source, one, at));
  byHeating.set(heating, { consumables, all });
  return all;
}

function tooHot(procedure: ProcedureView, source: TemperedPart, warmed: Warmed, at: Ref | undefined): Overheated[] {
  const { quantity } = source.until.reading;
  if (quantity?.dimension !== 'temperature') return [];
  const { highest } = boundsOf(quantity);
  const reaches = Number.isFinite(highest) ? highest : undefined;
  return standsOf(procedure, warmed).flatMap(({ value, where, document }): Overheated[] => {
    const stands = temperatureOf(value);
    if (stands === undefined || (reaches !== undefined && reaches <= stands)) return [];
    return [{ source, warmed, stands, stated: value, document, reaches, at, where }];
  });
}

function standsOf(procedure: ProcedureView, warmed: Warmed): Stands[] {
  const { family, space } = procedure;
  if (warmed.is === 'part') {
    if (family === undefined) return [];
    const { held } = heldValues(family.part(warmed.id)?.maxTemperature, space, warmed.where);
    return held.map((one) => ({ ...one, document: family.document }));
  }
  const item = procedure.consumables.get(warmed.id);
  const value = item?.entry.value.maxTemperature;
  return item === undefined || value === undefined ? [] : [{ value, where: warmed.where, document: item.document }];
}

/** The lower end of what is stated: `150 ± 5 °C` stands 145 °C for certain; of `≤ 150 °C` it is the number. */
function temperatureOf({ reading: { quantity } }: QuantityValue): number | undefined {
  if (quantity?.dimension !== 'temperature') return undefined;
  const { lowest, nominal } = boundsOf(quantity);
  return Number.isFinite(lowest) ? lowest : nominal;
}
