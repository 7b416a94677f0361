import type { BuildSet, BuildSpace } from '../builds';

/**
 * What is true of one part, each as the set of builds and outcomes for which it is. A lane never changes; a step gives
 * a new one. So the cost of a step grows with what conditions distinguish and not with how many builds there are.
 */
export interface Lane {
  /** All its pieces are in place on what carries it. */
  readonly fitted: BuildSet;
  /** At least one piece is in place. */
  readonly partly: BuildSet;
  /** By number of pieces in place, where that is neither none nor all. */
  readonly counts: ReadonlyMap<number, BuildSet>;
  /** Brought to its final torque since it was last loosened or fitted. */
  readonly torqued: BuildSet;
  /** A ring or clamp that was loosened and holds nothing until it is seated or tightened. */
  readonly released: BuildSet;
  /** In place, but used up: it had its torque and was loosened, or the joint that it seals was opened. */
  readonly spent: BuildSet;
  /** Sent out. */
  readonly away: BuildSet;
  /** Thrown away; what is fitted next is new. */
  readonly scrapped: BuildSet;
  /** New out of its bag: clean, unmarked. */
  readonly fresh: BuildSet;
  readonly clean: BuildSet;
  readonly inspected: BuildSet;
  readonly lubricated: BuildSet;
  /** Oil on its thread. */
  readonly oily: BuildSet;
  readonly threadlocked: BuildSet;
  readonly hot: BuildSet;
  readonly cold: BuildSet;
  readonly marked: BuildSet;
  /** A mark that was made before it came off, and is not yet aligned again. */
  readonly misaligned: BuildSet;
}

export type LaneKey = Exclude<keyof Lane, 'counts'>;

export function emptyLane(space: BuildSpace): Lane {
  const none = space.nothing;
  return {
    fitted: none,
    partly: none,
    counts: new Map(),
    torqued: none,
    released: none,
    spent: none,
    away: none,
    scrapped: none,
    fresh: none,
    clean: none,
    inspected: none,
    lubricated: none,
    oily: none,
    threadlocked: none,
    hot: none,
    cold: none,
    marked: none,
    misaligned: none,
  };
}

/** The lane with some of its facts made true, and others false, for the builds of a set. */
export function laneWith(lane: Lane, where: BuildSet, yes: readonly LaneKey[], no: readonly LaneKey[] = []): Lane {
  if (where.isEmpty || (yes.length === 0 && no.length === 0)) return lane;
  const next: Record<LaneKey, BuildSet> & { counts: Lane['counts'] } = { ...lane };
  for (const key of yes) next[key] = lane[key].or(where);
  for (const key of no) next[key] = lane[key].minus(where);
  return next;
}

/** What a part loses when it comes off: everything that was done to it to be fitted. */
export const DONE_FOR_FITTING: readonly LaneKey[] = [
  'clean',
  'inspected',
  'lubricated',
  'oily',
  'threadlocked',
  'hot',
  'cold',
];

/** Adds pieces in place for the builds of a set. */
export function withMore(lane: Lane, where: BuildSet, count: number, whole: number): Lane {
  if (count >= whole) return { ...laneWith(lane, where, ['fitted', 'partly']), counts: countsWithout(lane, where) };
  const counts = new Map<number, BuildSet>(countsWithout(lane, where));
  let full = lane.fitted.and(where);
  const put = (number: number, set: BuildSet): void => {
    if (set.isEmpty) return;
    if (number >= whole) full = full.or(set);
    else counts.set(number, counts.get(number)?.or(set) ?? set);
  };
  put(count, where.minus(lane.partly));
  for (const [number, set] of lane.counts) put(number + count, set.and(where));
  return { ...lane, fitted: lane.fitted.or(full), partly: lane.partly.or(where), counts };
}

/** Takes pieces off for the builds of a set; without a count, all of them. */
export function withFewer(lane: Lane, where: BuildSet, count: number | undefined, whole: number): Lane {
  if (count === undefined || count >= whole) {
    return { ...laneWith(lane, where, [], ['fitted', 'partly']), counts: countsWithout(lane, where) };
  }
  const counts = new Map<number, BuildSet>(countsWithout(lane, where));
  let none = where.minus(lane.partly);
  const put = (number: number, set: BuildSet): void => {
    if (set.isEmpty) return;
    if (number <= 0) none = none.or(set);
    else counts.set(number, counts.get(number)?.or(set) ?? set);
  };
  put(whole - count, lane.fitted.and(where));
  for (const [number, set] of lane.counts) put(number - count, set.and(where));
  return { ...lane, fitted: lane.fitted.minus(where), partly: lane.partly.minus(none), counts };
}

function countsWithout(lane: Lane, where: BuildSet): Map<number, BuildSet> {
  const counts = new Map<number, BuildSet>();
  for (const [number, set] of lane.counts) {
    const rest = set.minus(where);
    if (!rest.isEmpty) counts.set(number, rest);
  }
  return counts;
}
