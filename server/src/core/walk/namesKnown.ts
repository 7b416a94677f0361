import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSpace } from '../builds';

/** All that tells whether an instruction resolves, and what it is called, beside its own text: what it may name. */
export interface NamesKnown {
  /** A space belongs to one reading of a family, so where it is the same the parts are. */
  readonly space: BuildSpace;
  readonly consumables: unknown;
  readonly storesComplete: boolean;
  /** The ids of the procedure's own readings, and what they are called. */
  readonly readings: string;
  readonly readingNames: string;
}

export function namesKnown({ space, consumables, storesComplete, value }: ProcedureView): NamesKnown {
  const own = value.readings ?? [];
  const readings = own.map(({ id }) => id.id).join();
  const readingNames = own.map((one) => one.value.name?.text).join('\n');
  return { space, consumables, storesComplete, readings, readingNames };
}

export function areSameNames(one: NamesKnown, other: NamesKnown): boolean {
  if (one === other) return true;
  const isSameGround = one.space === other.space && one.readings === other.readings;
  const areSameStores = one.consumables === other.consumables && one.storesComplete === other.storesComplete;
  return isSameGround && areSameStores && one.readingNames === other.readingNames;
}
