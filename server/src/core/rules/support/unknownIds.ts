import { type NamedThing, Names } from '../../analysis/names';
import type { ProcedureView } from '../../analysis/procedureView';
import type { Ref } from '../../model/values';
import type { FixDraft, Surroundings } from '../ruleContext';
import { didYouMean } from './phrases';
import { listOf, type StoresKind, storesUses } from './storesUses';
import { isEcho } from './tornText';

export interface UnknownId {
  /** What may have been meant, nearest first. */
  readonly near: readonly NamedThing[];
}

/** An id that nothing has, certainly; undefined where something has it or where nobody can tell. */
export function unknownId(around: Surroundings, ref: Ref): UnknownId | undefined {
  // An id in a torn text may be half of what was written.
  if (ref.id === '' || isEcho(around.document, ref.range)) return undefined;
  const lookup = Names.of(around.snapshot, around.document).lookUp(ref.kind, ref.id);
  if (lookup.is !== 'unknown') return undefined;
  // A declaration that is no id itself is mended where it stands, not copied.
  return { near: lookup.near.filter((one) => /^[a-z][a-z0-9-]*$/.test(one.id)) };
}

/** A tool or consumable that no stores have. An id that the list has wrong is reported there alone. */
export function unknownInStores(
  around: Surroundings,
  procedure: ProcedureView,
  ref: Ref,
  kind: StoresKind,
): UnknownId | undefined {
  if (ref.kind !== kind || !procedure.storesComplete) return undefined;
  if (!ref.listing && storesUses(procedure, kind).listed.has(ref.id)) return undefined;
  return unknownId(around, ref);
}

/** The fixes that write a known id: in the list and wherever else the wrong one stands. */
export function writeKnownId(procedure: ProcedureView, ref: Ref, near: readonly NamedThing[]): FixDraft[] {
  const inList = listOf(procedure, ref.kind as StoresKind).some((one) => one === ref);
  const places = inList ? everyPlace(procedure, ref) : [ref];
  return near.map(({ id }) => ({
    title: `Write ${id}`,
    edits: places.map((place) => ({ range: place.range, text: id })),
  }));
}

function everyPlace(procedure: ProcedureView, wanted: Ref): Ref[] {
  return [...procedure.units()].flatMap(({ facts }) =>
    facts.refs.flatMap(({ ref }) => (ref.kind === wanted.kind && ref.id === wanted.id ? [ref] : [])),
  );
}

/** The end of a message: what may have been meant, or what to do where nothing comes near. */
export function meant(near: readonly NamedThing[], otherwise: string): string {
  return didYouMean(
    near.map((one) => one.id),
    otherwise,
  );
}
