import type { BuildSet } from '../builds';
import type { LaneKey } from './lane';
import { reportUnmarked } from './positions';
import { reportNotFitted, reportReach } from './reach';
import { withFewer } from './tally';
import { reportUnknownHand } from './threadHand';
import type { Act, Walker } from './walker';

/** Loosens a fastener: it must be there; a single-use one is spent, and a ring or clamp lets go of what it holds. */
export function loosen(walker: Walker, part: string, act: Act): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const there = reportNotFitted(walker, part, where);
  reportReach(walker, part, there);
  reportUnknownHand(walker, part, where);
  const { torqued } = state.lane(part);
  if (unit.isAlwaysRenewed(part)) state.change(part, there.and(torqued), ['spent']);
  state.change(part, there, ['released', 'unbonded'], ['snug', 'threadlocked', 'curing']);
  state.count(part, { tight: withFewer(state.lane(part).tight, there, undefined, unit.pieces(part)) });
  walker.touched(part, where);
  walker.happened('loosened', part, where);
}

/** What a part loses when it comes off: what was done to it to be fitted, and all that being in place means. */
const LOST: readonly LaneKey[] = [
  'snug',
  'released',
  'spent',
  'trial',
  'clean',
  'inspected',
  'lubricated',
  'oily',
  'threadlocked',
  'unbonded',
  'curing',
  'hot',
  'cold',
  'chosen',
];

/** Takes a part off, with everything that rides on it. */
export function remove(walker: Walker, part: string, act: Act, count: number | undefined): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  const there = reportNotFitted(walker, part, where);
  reportFasteners(walker, part, there);
  reportCovers(walker, part, there);
  if (unit.part(part)?.thread !== undefined) reportUnknownHand(walker, part, where);
  for (const seal of unit.relations.sealsOf(part)) state.change(seal, there.and(state.lane(seal).partly), ['spent']);
  const before = state.lane(part);
  const pieces = unit.pieces(part);
  state.count(part, {
    pieces: withFewer(before.pieces, where, count, pieces),
    tight: withFewer(before.tight, where, count, pieces),
  });
  comesOff(walker, part, where.minus(state.lane(part).partly));
  walker.touched(part, where);
  walker.happened('removed', part, where);
}

/** What is true of a part once no piece of it is left in place. */
function comesOff(walker: Walker, part: string, off: BuildSet): void {
  const { state, unit } = walker;
  const { trial, fresh, marked, decided } = state.lane(part);
  reportUnmarked(walker, part, off);
  const asFresh = trial.and(fresh);
  const renewed = unit.isAlwaysRenewed(part) ? off : off.and(decided).and(unit.renewed(part));
  state.change(part, off, ['disturbed'], [...LOST, 'fresh', 'supposed']);
  state.change(part, renewed.minus(asFresh), ['scrapped', 'fresh'], ['marked', 'painted']);
  state.change(part, off.and(asFresh), ['fresh']);
  state.change(part, off.and(marked).minus(renewed), ['misaligned']);
}

/** What still holds the part. After it is told, it counts as off, so that it is told once. */
function reportFasteners(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  for (const fastener of unit.relations.fasteners(part)) {
    const failing = where.and(holding(walker, fastener, part));
    if (!walker.fail('still-fastened', part, failing, { other: fastener, blame: ['tightened', 'seated', 'fitted'] }))
      continue;
    if (unit.freesLoose(fastener, part)) state.change(fastener, failing, ['released']);
    else asIfOff(walker, fastener, failing);
  }
}

/** Where a fastener holds a part: in place and, where it frees it when loose, not released. */
export function holding({ state, unit }: Walker, fastener: string, part: string): BuildSet {
  const { partly, released } = state.lane(fastener);
  return unit.freesLoose(fastener, part) ? partly.minus(released) : partly;
}

/** What the part is behind. Even what rides on the part keeps it from coming off. */
function reportCovers(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  const covers = unit.relations.behind(part);
  const inPlace = covers.length === 0 ? where : where.and(state.inUnit(part));
  for (const cover of covers) {
    if (unit.relations.ridesOn(part, cover)) continue;
    const failing = inPlace.and(state.inUnit(cover));
    if (walker.fail('covered', part, failing, { other: cover, blame: ['fitted'] })) asIfOff(walker, cover, failing);
  }
}

/** Once it is told that something is still in place, it counts as off, so that the rest is looked at as it was meant. */
function asIfOff({ state, unit }: Walker, part: string, where: BuildSet): void {
  const { pieces, tight } = state.lane(part);
  state.count(part, {
    pieces: withFewer(pieces, where, undefined, unit.pieces(part)),
    tight: withFewer(tight, where, undefined, unit.pieces(part)),
  });
  state.change(part, where, ['clean', 'inspected', 'supposed'], ['released', 'spent', 'trial']);
}
