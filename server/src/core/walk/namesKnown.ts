import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSpace } from '../builds';

/** All that tells whether an instruction resolves, beside its own text: what it may name. */
export interface NamesKnown {
  /** A space belongs to one reading of a family, so where it is the same the parts are. */
  readonly space: BuildSpace;
  readonly consumables: unknown;
  readonly storesComplete: boolean;
  readonly readings: string;
}

export function namesKnown({ space, consumables, storesComplete, value }: ProcedureView): NamesKnown {
  return { space, consumables, storesComplete, readings: (value.readings ?? []).map(({ id }) => id.id).join() };
}

export function areSameNames(one: NamesKnown, other: NamesKnown): boolean {
  if (one === other) return true;
  const isSameGround = one.space === other.space && one.readings === other.readings;
  return isSameGround && one.consumables === other.consumables && one.storesComplete === other.storesComplete;
}
