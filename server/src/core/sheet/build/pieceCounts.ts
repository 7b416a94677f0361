import type { BuildSet } from '../../builds';

/** How many pieces, by build, as the walk counts them: no entry where there are none. */
type Tally = ReadonlyMap<number, BuildSet>;

/** Puts two numbers of pieces together, build by build, within what is known. What comes to none is left out. */
export function combined(
  one: Tally,
  other: Tally,
  known: BuildSet,
  put: (one: number, other: number) => number,
): Map<number, BuildSet> {
  const result = new Map<number, BuildSet>();
  for (const [first, firstWhere] of withNone(one, known)) {
    for (const [second, secondWhere] of withNone(other, known)) {
      const number = put(first, second);
      const where = firstWhere.and(secondWhere);
      if (number > 0 && !where.isEmpty) result.set(number, result.get(number)?.or(where) ?? where);
    }
  }
  return result;
}

function withNone(tally: Tally, known: BuildSet): [number, BuildSet][] {
  let none = known;
  const all: [number, BuildSet][] = [];
  for (const [number, set] of tally) {
    none = none.minus(set);
    all.push([number, set.and(known)]);
  }
  return [[0, none], ...all];
}

/** The number that holds for all of a set, where there is one. */
export function oneNumber(tally: Tally, where: BuildSet): number | undefined {
  for (const [number, set] of tally) if (where.isWithin(set)) return number;
  return undefined;
}

export const more = (after: number, before: number): number => Math.max(0, after - before);
export const sum = (one: number, other: number): number => one + other;
