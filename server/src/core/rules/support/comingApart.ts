import type { FamilyView } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import { Holding, type Meant } from './holding';
import { type Off, stillOn } from './inUnit';
import { type Edge, type Knot, knotsOf } from './knots';
import { type Standing, type Task, type Work, whatIsLeft } from './whatIsLeft';

/** Why a part cannot come off, or a fastener not be loosened, before another one is off. */
export interface Hindrance {
  readonly is: 'fastened' | 'behind';
  /** The part that waits, and the one that it waits for. */
  readonly part: string;
  readonly by: Meant;
}

type Hindered = Edge<Hindrance>;

const remembered = new WeakMap<FamilyView, readonly Knot<Hindrance>[]>();

/** The circles that leave no order of taking the unit apart. */
export function knotsOfStripping(family: FamilyView): readonly Knot<Hindrance>[] {
  const known = remembered.get(family);
  if (known !== undefined) return known;
  const holding = Holding.of(family);
  const work: Work<Hindrance> = {
    tasks: allTasks(holding),
    left: (task, off) => leftOf(holding, off, task),
    looksAt: ({ part }) => lookedAt(holding, part),
    hindrances: (task, standing) => hindrances(holding, standing, task),
  };
  const knots = knotsOf(holding.space, (freed) => whatIsLeft(holding, work, freed));
  remembered.set(family, knots);
  return knots;
}

/** A fastener that is to be loosened, not taken off, waits only for what it is out of reach behind. */
function looseKey(fastener: string): string {
  return `${fastener} loose`;
}

/** The part that a knot's edge leads from, whether it is to come off or to be loosened. */
export function partOfKey(key: string): string {
  return key.replace(/ loose$/, '');
}

function allTasks(holding: Holding): Task[] {
  const ids = [...holding.family.parts.keys()].filter((id) => !holding.bases.has(id));
  const loosened = new Set(
    ids.flatMap((held) =>
      holding.meant(held, 'fasteners').flatMap(({ id }) => (holding.freesLoose(id, held) ? [id] : [])),
    ),
  );
  return ids.flatMap((part) => [
    { key: part, part, loosen: false },
    ...(loosened.has(part) ? [{ key: looseKey(part), part, loosen: true }] : []),
  ]);
}

/** What fastens a part, what it is behind, and what carries these in the unit. */
function lookedAt(holding: Holding, part: string): string[] {
  const covers = holding.meant(part, 'covers').map(({ id }) => id);
  const inUnitBy = covers.length === 0 ? [] : [part, ...covers].flatMap((id) => [...holding.below(id)]);
  return [...holding.meant(part, 'fasteners').map(({ id }) => id), ...covers, ...inUnitBy];
}

/** Where it is not done yet; a fastener that is off need not be loosened. */
function leftOf(holding: Holding, off: Off, { key, part, loosen }: Task): BuildSet {
  const on = stillOn(holding, off, part);
  return loosen ? on.minus(off.get(key) ?? holding.space.nothing) : on;
}

function hindrances(holding: Holding, { off, inside }: Standing, task: Task): Hindered[] {
  const { part } = task;
  const left = leftOf(holding, off, task);
  const found: Hindered[] = [];
  if (left.isEmpty) return found;
  const add = (is: Hindrance['is'], by: Meant, to: string, set: BuildSet): void => {
    const where = left.and(set);
    if (!where.isEmpty) found.push({ from: task.key, to, where, why: { is, part, by } });
  };
  for (const by of task.loosen ? [] : holding.meant(part, 'fasteners')) {
    if (holding.bases.has(by.id)) continue;
    const loosen = holding.freesLoose(by.id, part);
    const key = loosen ? looseKey(by.id) : by.id;
    add('fastened', by, key, leftOf(holding, off, { key, part: by.id, loosen }));
  }
  const here = inside.get(part) ?? holding.space.nothing;
  for (const by of holding.meant(part, 'covers')) {
    if (holding.bases.has(by.id) || holding.ridesOn(part, by.id)) continue;
    // What rides on a fastener leaves it in reach, though it would keep it from coming off.
    if (task.loosen && holding.ridesOn(by.id, part)) continue;
    add('behind', by, by.id, here.and(inside.get(by.id) ?? holding.space.nothing));
  }
  return found;
}
