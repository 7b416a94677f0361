import { heldValues } from '../analysis/heldValues';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { QuantityValue, Ref } from '../model/values';
import { boundsOf } from '../quantity';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Warmed } from './fitSurroundings';
import { type TemperedPart, temperatureTrace } from './fitTrace';

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
  const all = temperatureTrace(procedure).heatings.flatMap(({ source, warmed, at }) =>
    warmed.flatMap((one) => tooHot(procedure, source, one, at)),
  );
  const once: Overheated[] = [];
  for (const one of all) {
    const told = once.filter(({ source, stated }) => source.until === one.source.until && stated === one.stated);
    const where = one.where.minus(procedure.space.union(told.map((earlier) => earlier.where)));
    if (!where.isEmpty) once.push({ ...one, where });
  }
  remembered.set(procedure, once);
  return once;
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
