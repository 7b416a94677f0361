import type { BuildSet } from '../builds';

/** How many pieces of something, by build: a set for each number above none. The sets exclude each other. */
export type Tally = ReadonlyMap<number, BuildSet>;

/** How many pieces a part has, for the builds of each set; together they hold every build that has the part. */
export type Pieces = readonly { readonly number: number; readonly where: BuildSet }[];

export const NO_PIECES: Tally = new Map();

/** Adds pieces for the builds of a set, or all where no count is given. There are never more than the part has. */
export function withMore(tally: Tally, where: BuildSet, count: number | undefined, pieces: Pieces): Tally {
  return changed(tally, where, pieces, (number, whole) =>
    count === undefined ? whole : Math.min(whole, number + count),
  );
}

/** Takes pieces away for the builds of a set, or all where no count is given. */
export function withFewer(tally: Tally, where: BuildSet, count: number | undefined, pieces: Pieces): Tally {
  return changed(tally, where, pieces, (number) => (count === undefined ? 0 : Math.max(0, number - count)));
}

function changed(
  tally: Tally,
  where: BuildSet,
  pieces: Pieces,
  next: (number: number, whole: number) => number,
): Tally {
  const result = new Map<number, BuildSet>();
  const put = (number: number, set: BuildSet): void => {
    if (number > 0 && !set.isEmpty) result.set(number, result.get(number)?.or(set) ?? set);
  };
  let none = where;
  for (const [number, set] of tally) {
    none = none.minus(set);
    put(number, set.minus(where));
    const here = set.and(where);
    if (!here.isEmpty) for (const one of pieces) put(next(number, one.number), here.and(one.where));
  }
  if (!none.isEmpty) for (const one of pieces) put(next(0, one.number), none.and(one.where));
  return result;
}

/** Where there is any piece. */
export function someOf(tally: Tally, nothing: BuildSet): BuildSet {
  let some = nothing;
  tally.forEach((set) => {
    some = some.or(set);
  });
  return some;
}

/** Where there are at least as many pieces as another tally has; never where it has none. */
export function asManyAs(tally: Tally, wanted: Tally, nothing: BuildSet): BuildSet {
  let result = nothing;
  if (tally.size === 0) return result;
  wanted.forEach((where, least) => {
    result = result.or(atLeast(tally, least, where, nothing));
  });
  return result;
}

/** Where there are as many pieces as the part has. */
export function allOf(tally: Tally, pieces: Pieces, nothing: BuildSet): BuildSet {
  let result = nothing;
  if (tally.size > 0)
    for (const { number, where } of pieces) result = result.or(atLeast(tally, number, where, nothing));
  return result;
}

function atLeast(tally: Tally, least: number, where: BuildSet, nothing: BuildSet): BuildSet {
  let result = nothing;
  tally.forEach((set, number) => {
    if (number >= least) result = result.or(set.and(where));
  });
  return result;
}

export function isSameTally(one: Tally, other: Tally): boolean {
  if (one === other) return true;
  if (one.size !== other.size) return false;
  for (const [number, set] of one) if (other.get(number) !== set) return false;
  return true;
}
