import type { BuildSet, BuildSpace } from '../builds';
import { allOf, asManyAs, isSameTally, NO_PIECES, type Pieces, someOf, type Tally } from './tally';

/** What can be true of a part, besides how many of its pieces are in place and tight. */
const FACTS = [
  /** It got a pass that is not the final one. */
  'snug',
  /** It was loosened, or is a ring or clamp that was fitted, and was neither seated nor tightened since. */
  'released',
  /** In place, but used up: a single-use fastener loosened after its final torque, a seal whose joint was opened. */
  'spent',
  /** In place for a trial only. */
  'trial',
  /** New: never fitted before it was fitted last, or not at all yet. */
  'fresh',
  'away',
  'scrapped',
  'returned',
  'clean',
  'inspected',
  'lubricated',
  'threadlocked',
  /** Loosened in place since it was last threadlocked: the bond is broken. */
  'unbonded',
  /** Oil on its thread. */
  'oily',
  /** Blasted and not cleaned since. */
  'dirty',
  /** Tightened over threadlocker that has not set. */
  'curing',
  'hot',
  'cold',
  'marked',
  /** Its mark is paint, which cleaning takes off. */
  'painted',
  /** It came off marked, and was not aligned since. */
  'misaligned',
  /** Its size was chosen for the next fitting. */
  'chosen',
  /** It came off at some time. */
  'disturbed',
  /** Something was fitted in this work. */
  'handled',
  /** It was told to be missing, or in the way, and counts since as it should be. */
  'supposed',
  /** It was decided whether it is used again or renewed. */
  'decided',
] as const;

export type LaneKey = (typeof FACTS)[number];

/**
 * What is true of one part, each as the set of builds, outcomes and ways for which it is. A lane never changes; a step
 * gives a new one. So the cost of a step grows with what conditions distinguish and not with how many builds there are.
 */
export interface Lane extends Readonly<Record<LaneKey, BuildSet>> {
  readonly pieces: Tally;
  readonly tight: Tally;
  /** All its pieces are in place. */
  readonly fitted: BuildSet;
  /** At least one piece is in place. */
  readonly partly: BuildSet;
  /** In place, and every piece in place has had its final torque since it was loosened or fitted. */
  readonly torqued: BuildSet;
}

const empties = new WeakMap<BuildSpace, Lane>();

export function emptyLane(space: BuildSpace): Lane {
  const known = empties.get(space);
  if (known !== undefined) return known;
  const none = space.nothing;
  const facts = Object.fromEntries(FACTS.map((key) => [key, none])) as Record<LaneKey, BuildSet>;
  const lane = { ...facts, pieces: NO_PIECES, tight: NO_PIECES, fitted: none, partly: none, torqued: none };
  empties.set(space, lane);
  return lane;
}

/** The lane with some of its facts made true, and others false, for the builds of a set. */
export function laneWith(lane: Lane, where: BuildSet, yes: readonly LaneKey[], no: readonly LaneKey[] = []): Lane {
  if (where.isEmpty) return lane;
  let next: (Record<LaneKey, BuildSet> & Lane) | undefined;
  const put = (key: LaneKey, set: BuildSet): void => {
    if (set === lane[key]) return;
    next ??= { ...lane };
    next[key] = set;
  };
  for (const key of no) put(key, lane[key].minus(where));
  for (const key of yes) put(key, lane[key].or(where));
  return next ?? lane;
}

/** The lane with other numbers of pieces in place or tight; `pieces` is how many the part has, `none` the set without any build. */
export function laneWithPieces(
  lane: Lane,
  numbers: { readonly pieces?: Tally; readonly tight?: Tally },
  pieces: Pieces,
  none: BuildSet,
): Lane {
  const { pieces: inPlace = lane.pieces, tight = lane.tight } = numbers;
  return {
    ...lane,
    pieces: inPlace,
    tight,
    fitted: allOf(inPlace, pieces, none),
    partly: someOf(inPlace, none),
    torqued: asManyAs(tight, inPlace, none),
  };
}

export function isSameLane(one: Lane, other: Lane): boolean {
  if (one === other) return true;
  return (
    FACTS.every((key) => one[key] === other[key]) &&
    isSameTally(one.pieces, other.pieces) &&
    isSameTally(one.tight, other.tight)
  );
}
