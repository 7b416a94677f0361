import type { FamilyView } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import { knotsOfStripping, partOfKey } from './comingApart';
import { Holding, type Meant } from './holding';
import { carried, inUnit, type Off, stillOn } from './inUnit';
import { type Edge, type Knot, knotsOf } from './knots';
import { type Standing, type Work, whatIsLeft } from './whatIsLeft';

/** Why a part must be fitted before another one is. */
export interface Precedence {
  readonly is: 'fastened' | 'behind';
  /** The part that waits, what goes in with it (or itself), and what must not be there yet. */
  readonly part: string;
  readonly moved: string;
  readonly by: Meant;
}

type Later = Edge<Precedence>;

/**
 * The circles that leave no order of fitting, but for those that leave no order of taking apart either. Fitting is
 * looked at backwards: a part may have been fitted last where it could be fitted to all that is left. To take away
 * such a part never stands in the way of another, so that it does not matter which is taken away first.
 */
export function knotsOfFitting(family: FamilyView): readonly Knot<Precedence>[] {
  const known = remembered.get(family) ?? findKnots(family);
  remembered.set(family, known);
  return known;
}

const remembered = new WeakMap<FamilyView, readonly Knot<Precedence>[]>();

function findKnots(family: FamilyView): readonly Knot<Precedence>[] {
  const holding = Holding.of(family);
  const told = new Map<string, BuildSet>();
  for (const { edges, where } of knotsOfStripping(family)) {
    for (const id of edges.map((edge) => partOfKey(edge.from))) told.set(id, (told.get(id) ?? where).or(where));
  }
  const riders = ridersOf(holding);
  const work: Work<Precedence> = {
    tasks: [...family.parts.keys()].flatMap((id) =>
      holding.bases.has(id) ? [] : [{ key: id, part: id, loosen: false }],
    ),
    left: ({ part }, off) => stillOn(holding, off, part),
    looksAt: ({ part }) => lookedAt(holding, part, riders.get(part) ?? []),
    hindrances: ({ part }, standing) => mustComeLater(holding, riders, standing, part),
  };
  return knotsOf(holding.space, (freed) => whatIsLeft(holding, work, freed), told);
}

/** What fastens a part, what goes in with it, what one of these is behind, and what carries them all in the unit. */
function lookedAt(holding: Holding, part: string, riders: readonly string[]): string[] {
  const covers = [part, ...riders].flatMap((moved) => holding.meant(moved, 'covers').map(({ id }) => id));
  const inUnitBy = covers.length === 0 ? [] : [part, ...covers].flatMap((id) => [...holding.below(id)]);
  return [...holding.meant(part, 'fasteners').map(({ id }) => id), ...riders, ...covers, ...inUnitBy];
}

/** What must not be in place yet when a part is fitted: its fasteners, and what it, or what it carries, is behind. */
function mustComeLater(holding: Holding, riders: Riders, { off, inside }: Standing, part: string): Later[] {
  const left = stillOn(holding, off, part);
  const found: Later[] = [];
  if (left.isEmpty) return found;
  const add = (is: Precedence['is'], moved: string, by: Meant, set: BuildSet): void => {
    const where = left.and(set);
    if (!where.isEmpty) found.push({ from: part, to: by.id, where, why: { is, part, moved, by } });
  };
  for (const by of holding.meant(part, 'fasteners')) {
    // One that lets go when it is loose may hang in its place already, and one on the part comes in with it.
    if (holding.bases.has(by.id) || holding.freesLoose(by.id, part) || holding.ridesOn(by.id, part)) continue;
    add('fastened', part, by, stillOn(holding, off, by.id));
  }
  let before: ReadonlyMap<string, BuildSet> | undefined;
  for (const [moved, goesIn] of goingIn(holding, riders.get(part) ?? [], off, part)) {
    for (const by of goesIn.isEmpty ? [] : holding.meant(moved, 'covers')) {
      if (by.id === part || holding.bases.has(by.id) || holding.ridesOn(moved, by.id)) continue;
      const onPart = holding.ridesOn(by.id, part);
      // Before the part is there, what sits on it alone is not in the unit either.
      if (onPart) before ??= inUnit(holding, off, part);
      const there = (onPart ? before : inside)?.get(by.id) ?? holding.space.nothing;
      const riding = onPart && moved === part ? stillOn(holding, off, by.id) : holding.space.nothing;
      add('behind', moved, by, goesIn.and(carried(holding, inside, part).and(there).or(riding)));
    }
  }
  return found;
}

/** The part and what is in place on it, with the builds on which it goes in together with the part. */
function goingIn(holding: Holding, riders: readonly string[], off: Off, part: string): Map<string, BuildSet> {
  const { space } = holding;
  const sets = new Map([[part, stillOn(holding, off, part)]]);
  for (const id of riders) {
    const carriers = holding.meant(id, 'carriers').flatMap((one) => sets.get(one.id) ?? []);
    sets.set(id, stillOn(holding, off, id).and(space.union(carriers)));
  }
  return sets;
}

type Riders = ReadonlyMap<string, readonly string[]>;

/**
 * What may go in with each part, straight or through others, from the bottom up; what sits on something else as well
 * stays where it is.
 */
function ridersOf(holding: Holding): Riders {
  const riders = new Map<string, string[]>();
  const alone = (id: string): boolean => holding.family.part(id)?.sitsOn?.length === 1;
  for (const id of holding.bottomUp) {
    if (!alone(id)) continue;
    for (const carrier of carriersBelow(holding, id, alone)) riders.set(carrier, [...(riders.get(carrier) ?? []), id]);
  }
  return riders;
}

/** All that carries a part, as far down as each sits on one thing alone. */
function carriersBelow(holding: Holding, id: string, alone: (id: string) => boolean): ReadonlySet<string> {
  const found = new Set<string>([id]);
  for (const one of found) if (alone(one)) for (const carrier of holding.meant(one, 'carriers')) found.add(carrier.id);
  found.delete(id);
  return found;
}
