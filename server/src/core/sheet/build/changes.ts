import type { BuildSet } from '../../builds';
import { emptyLane, type Lane } from '../../walk/lane';
import type { Moment, Stretch } from '../../walk/trace';
import type { StepPlace } from '../sheet';
import type { BuildContext } from './buildContext';
import type { WalkedWork } from './walkedWork';

/** What one instruction made of a part. */
export interface Change {
  readonly moment: Moment;
  readonly before: Lane;
  readonly after: Lane;
}

/** A place among the moments of the work: so many moments of a stretch lie before it. */
export interface MomentPlace {
  /** The stretch by its place among all of them. */
  readonly stretch: number;
  readonly moments: number;
}

const BEGINNING: MomentPlace = { stretch: 0, moments: 0 };

/**
 * What the work makes of a part from a place on, in order. What is only done over again, after a result was not right, is
 * left out.
 */
export function* changesOf(part: string, { stretches, unit }: WalkedWork, from = BEGINNING): Generator<Change> {
  for (let at = from.stretch; at < stretches.length; at += 1) {
    const stretch = stretches[at];
    if (stretch === undefined) continue;
    const least = at === from.stretch ? from.moments : 0;
    for (const change of changesIn(stretch, part, unit.space)) {
      if (least === 0 || stretch.moments.indexOf(change.moment) >= least) yield change;
    }
  }
}

/** The lane of a part at a place. */
export function laneAt(
  part: string,
  { stretches, end, unit }: WalkedWork,
  { stretch: at, moments }: MomentPlace,
): Lane {
  const stretch = stretches[at];
  if (stretch === undefined) return end.get(part) ?? emptyLane(unit.space);
  const before = stretch.momentsOf(part).filter((moment) => stretch.moments.indexOf(moment) < moments);
  return before.at(-1)?.lanes.get(part) ?? stretch.lane(part) ?? emptyLane(unit.space);
}

const known = new WeakMap<Stretch, Map<string, readonly Change[]>>();

/** A stretch is the same object as long as these changes are. */
function changesIn(stretch: Stretch, part: string, space: Parameters<typeof emptyLane>[0]): readonly Change[] {
  const byPart = known.get(stretch) ?? new Map<string, readonly Change[]>();
  known.set(stretch, byPart);
  const already = byPart.get(part);
  if (already !== undefined) return already;
  let before = stretch.lane(part) ?? emptyLane(space);
  const changes = stretch.momentsOf(part).flatMap((moment) => {
    const change = { moment, before, after: moment.lanes.get(part) ?? before };
    before = change.after;
    return moment.again ? [] : [change];
  });
  byPart.set(part, changes);
  return changes;
}

/** The last change that made something true where it matters. */
export function lastMaking(
  part: string,
  of: (lane: Lane) => BuildSet,
  where: BuildSet,
  { stretches, unit }: WalkedWork,
): Change | undefined {
  for (const stretch of stretches.toReversed()) {
    const makes = ({ before, after }: Change) =>
      of(after) !== of(before) && of(after).minus(of(before)).overlaps(where);
    const last = changesIn(stretch, part, unit.space).findLast(makes);
    if (last !== undefined) return last;
  }
  return undefined;
}

/** The steps of some changes, each once, by the numbers that they have on the sheet. */
export function placesOf(changes: Iterable<Change>, { stepNames }: BuildContext): StepPlace[] {
  const ids = new Set<string>();
  for (const { moment } of changes) ids.add(moment.step.id);
  return [...ids].flatMap((id) => {
    const step = stepNames.numbers.get(id);
    return step === undefined ? [] : [{ step, stepId: id }];
  });
}
