import type { FamilyView } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import { Holding, type Meant } from './holding';
import { type Edge, type Freed, type Knot, knotsOf } from './knots';

export interface Sitting {
  readonly part: string;
  readonly by: Meant;
}

/** The circles of parts that sit on each other; the base sits on nothing, whatever is written. */
export function knotsOfCarrying(family: FamilyView): readonly Knot<Sitting>[] {
  const holding = Holding.of(family);
  const knots = remembered.get(family) ?? knotsOf(holding.space, (freed) => endless(holding, freed));
  remembered.set(family, knots);
  return knots;
}

const remembered = new WeakMap<FamilyView, readonly Knot<Sitting>[]>();

/** Where the way down from a part never ends: what sits on nothing is taken away until nothing is left that does. */
function endless(holding: Holding, freed: Freed): Edge<Sitting>[] {
  const { space, bases } = holding;
  const left = new Map<string, BuildSet>();
  for (const id of holding.family.parts.keys()) {
    if (!bases.has(id)) left.set(id, holding.presence(id).minus(freed.get(id) ?? space.nothing));
  }
  for (let changed = true; changed; ) {
    changed = false;
    for (const [id, set] of left) {
      const rest = set.and(space.union(holding.meant(id, 'carriers').flatMap((one) => left.get(one.id) ?? [])));
      if (rest === set) continue;
      left.set(id, rest);
      changed = true;
    }
  }
  return [...left].flatMap(([part, set]) =>
    holding.meant(part, 'carriers').flatMap((by) => {
      const where = set.and(left.get(by.id) ?? space.nothing);
      return where.isEmpty ? [] : [{ from: part, to: by.id, where, why: { part, by } }];
    }),
  );
}

/** The builds that have a part but nothing that it sits on; a part that says what carries it by an unknown id is on none. */
export function carriedByNothing(holding: Holding, id: string): BuildSet {
  const { family, space, bases } = holding;
  const part = family.part(id);
  if (part === undefined || bases.has(id) || bases.size === 0) return space.nothing;
  const named = (part.sitsOn ?? []).map(({ ref }) => ref.id);
  if (named.some((one) => one === id || family.part(one) === undefined)) return space.nothing;
  return holding.presence(id).minus(space.union(holding.meant(id, 'carriers').map((one) => holding.presence(one.id))));
}
