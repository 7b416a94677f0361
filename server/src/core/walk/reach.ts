import type { BuildSet } from '../builds';
import type { Walker } from './walker';

/** What stands before a part that is to be worked on. What rides on a part, or carries it, leaves it in reach. */
export function reportReach(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  const { relations } = unit;
  const covers = relations.behind(part);
  if (covers.length === 0) return;
  const inPlace = where.and(state.inUnit(part));
  if (inPlace.isEmpty) return;
  for (const cover of covers) {
    if (relations.ridesOn(part, cover) || relations.ridesOn(cover, part)) continue;
    const failing = inPlace.and(state.inUnit(cover));
    walker.fail('unreachable', part, failing, { other: cover, blame: ['fitted'] });
  }
}

/** The part is not there to be turned or taken off. Gives back where it is there. */
export function reportNotFitted(walker: Walker, part: string, where: BuildSet): BuildSet {
  const { partly, supposed } = walker.state.lane(part);
  const missing = where.minus(partly).minus(supposed);
  walker.fail('not-fitted', part, missing, { blame: ['removed'] });
  return where.minus(missing);
}

/** What goes away must be out of the unit. */
export function reportStillIn(walker: Walker, part: string, where: BuildSet): void {
  const inPlace = where.and(walker.state.inUnit(part));
  walker.fail('still-in-unit', part, inPlace, { blame: ['fitted'] });
}
