import type { BuildSet } from '../builds';
import { DONE_FOR_FITTING, withFewer } from './lane';
import { reportUnmarked } from './positions';
import { reportUnknownHand } from './threadHand';
import type { Act, Walker } from './walker';

/** Loosens a fastener: it must be there; a spent one is marked so, and a ring or clamp lets go of what it holds. */
export function loosen(walker: Walker, part: string, act: Act): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const lane = state.lane(part);
  notFitted(walker, part, where.minus(lane.partly), act);
  reportUnknownHand(walker, part, where, act);
  if (unit.isAlwaysRenewed(part)) state.change(part, where.and(lane.torqued), ['spent']);
  state.change(part, where, ['released'], ['torqued']);
  walker.touched(part, where);
  walker.happened('loosened', part, act);
}

/** Takes a part off, with everything that rides on it. */
export function remove(walker: Walker, part: string, act: Act, count: number | undefined): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const lane = state.lane(part);
  const missing = where.minus(lane.partly);
  notFitted(walker, part, missing, act);
  const there = where.minus(missing);
  reportFasteners(walker, part, there, act);
  reportCovers(walker, part, there, act, 'covered');
  for (const seal of unit.sealsOf(part)) state.change(seal, there.and(state.lane(seal).partly), ['spent']);
  const fewer = withFewer(lane, where, count, unit.pieces(part));
  state.put(part, fewer);
  const off = where.minus(fewer.partly);
  state.change(part, off, [], ['torqued', 'released', 'spent', ...DONE_FOR_FITTING]);
  if (unit.isAlwaysRenewed(part)) state.change(part, off, ['scrapped', 'fresh']);
  else state.change(part, off, [], ['fresh']);
  reportUnmarked(walker, part, off, act);
  state.change(part, off.and(lane.marked), ['misaligned']);
  walker.touched(part, where);
  walker.happened('removed', part, act);
}

function notFitted(walker: Walker, part: string, where: BuildSet, act: Act): void {
  walker.fail('not-fitted', part, where, { at: act.at, because: walker.lastTime(part, ['removed'], where) });
}

/** What still holds the part. After it is told, it counts as off, so that it is told once. */
function reportFasteners(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  for (const fastener of unit.fasteners(part)) {
    const lane = state.lane(fastener);
    const holding = unit.freesLoose(fastener, part) ? lane.partly.minus(lane.released) : lane.partly;
    const failing = where.and(holding).and(unit.everPresent(fastener));
    const because = walker.lastTime(fastener, ['tightened', 'fitted'], failing);
    if (walker.fail('still-fastened', part, failing, { at: act.at, other: fastener, because })) {
      state.change(fastener, failing, ['released'], ['torqued']);
      if (!unit.freesLoose(fastener, part)) state.change(fastener, failing, [], ['partly', 'fitted']);
    }
  }
}

/** Once it is told that something is still in place, it counts as off, so that the rest of the work is looked at as meant. */
function asIfOff(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  state.put(part, withFewer(state.lane(part), where, undefined, unit.pieces(part)));
  state.change(part, where, ['clean', 'inspected'], ['torqued', 'released', 'spent']);
}

/** What stands before the part. A part that rides on it, or that is itself off the unit, can be reached. */
export function reportCovers(
  walker: Walker,
  part: string,
  where: BuildSet,
  act: Act,
  cause: 'covered' | 'unreachable',
): void {
  const { state, unit } = walker;
  const inPlace = where.and(state.inUnit(part));
  if (inPlace.isEmpty) return;
  for (const cover of unit.behind(part)) {
    // What rides on a part leaves it in reach, though it keeps it from coming off.
    if (state.ridesOn(part, cover) || (cause === 'unreachable' && state.ridesOn(cover, part))) continue;
    const failing = inPlace.and(state.inUnit(cover));
    const because = walker.lastTime(cover, ['fitted'], failing);
    if (walker.fail(cause, part, failing, { at: act.at, other: cover, because }) && cause === 'covered')
      asIfOff(walker, cover, failing);
  }
}
