import type { BuildSet } from '../../builds';
import type { Holding } from './holding';

/** For each part the builds on which it is off; a part that is not listed is off nowhere. */
export type Off = ReadonlyMap<string, BuildSet>;

/** Where a part still is where it belongs, be that in the unit or on something that lies on the bench. */
export function stillOn(holding: Holding, off: Off, id: string): BuildSet {
  const gone = off.get(id);
  const there = holding.inPlace(id);
  return gone === undefined ? there : there.minus(gone);
}

/**
 * Where each part is in the unit: the base always; another part while it is in place and one of its carriers is in the
 * unit, or where the build has none of its carriers. `without` is looked at as if it were off.
 */
export function inUnit(holding: Holding, off: Off, without?: string): Map<string, BuildSet> {
  const sets = new Map<string, BuildSet>();
  const { space, bottomUp, bases } = holding;
  for (const id of bases) sets.set(id, space.everything);
  // One round is enough where no circle of carriers prevents the order from the bottom up.
  for (let changed = true; changed; ) {
    changed = false;
    for (const id of bottomUp) {
      if (id === without || bases.has(id)) continue;
      const set = stillOn(holding, off, id).and(carried(holding, sets, id));
      if (set === (sets.get(id) ?? space.nothing)) continue;
      sets.set(id, set);
      changed = true;
    }
  }
  return sets;
}

/** Where what carries a part is in the unit. */
export function carried(holding: Holding, sets: ReadonlyMap<string, BuildSet>, id: string): BuildSet {
  const { space } = holding;
  const carriers = holding.meant(id, 'carriers');
  if (carriers.length === 0) return space.everything;
  const inPlace = space.union(carriers.flatMap((one) => sets.get(one.id) ?? []));
  return inPlace.or(withoutCarriers(holding, id));
}

const missing = new WeakMap<Holding, Map<string, BuildSet>>();

/** The builds that have nothing of what a part may sit on. */
function withoutCarriers(holding: Holding, id: string): BuildSet {
  const known = missing.get(holding) ?? new Map<string, BuildSet>();
  missing.set(holding, known);
  const carriers = holding.meant(id, 'carriers').map((one) => holding.presence(one.id));
  const set = known.get(id) ?? holding.space.union(carriers).complement();
  known.set(id, set);
  return set;
}

/**
 * Takes a part that has come off out of the sets, with what is no longer carried. Where parts sit on each other in a
 * circle it may leave too much in; a new round of `inUnit` puts that right.
 */
export function takeOutOfUnit(holding: Holding, off: Off, sets: Map<string, BuildSet>, id: string): void {
  const waiting = [id];
  for (const one of waiting) {
    const before = sets.get(one);
    if (before === undefined || holding.bases.has(one)) continue;
    const after = before.and(stillOn(holding, off, one)).and(carried(holding, sets, one));
    if (after === before) continue;
    sets.set(one, after);
    waiting.push(...holding.riders(one));
  }
}
