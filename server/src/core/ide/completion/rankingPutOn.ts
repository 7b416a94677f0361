import type { BuildSet } from '../../builds';
import { RANKS, type Rank } from './rank';
import type { StandingUnit } from './rankingState';
import { firstUnmet, NOT_YET } from './rankingWants';

/** What is off, has its seat and nothing in its way comes first. */
export function judgeInstall(unit: StandingUnit, id: string): Rank {
  const { fitted, away, returned } = unit.lane(id);
  const off = unit.meant(id).minus(fitted);
  if (off.isEmpty || id === unit.unit.base) return { rank: RANKS.pointless, why: 'already fitted' };
  if (!unit.unit.isTemporary(id) && !off.overlaps(unit.unit.presence(id, 'finished')))
    return { rank: RANKS.pointless, why: 'not in the finished unit' };
  if (off.overlaps(away)) return { rank: RANKS.blocked, why: 'sent out' };
  if (off.overlaps(returned)) return { rank: RANKS.pointless, why: 'given back' };
  const other = inTheWay(unit, id, off);
  if (other !== undefined) return { rank: RANKS.blocked, why: `goes in before the ${unit.nameOf(other)}` };
  const seat = missingSeat(unit, id, off);
  if (seat !== undefined) return { rank: RANKS.possible, why: `its seat, the ${unit.nameOf(seat)}, is off` };
  const unmet = firstUnmet(unit, id, off);
  return unmet === undefined ? { rank: RANKS.next } : { rank: RANKS.possible, why: NOT_YET[unmet] ?? '' };
}

/** A ring or clamp that was released and has not been seated since comes first. */
export function judgeSeat(unit: StandingUnit, id: string): Rank {
  const { partly, released } = unit.lane(id);
  const on = unit.meant(id).and(partly);
  if (!unit.unit.isRing(id) && !unit.unit.isClamp(id)) return { rank: RANKS.pointless };
  if (on.isEmpty) return { rank: RANKS.blocked, why: 'not fitted here' };
  return on.overlaps(released) ? { rank: RANKS.next, why: 'loose here' } : { rank: RANKS.possible, why: 'in place' };
}

/** Something in place that has to come after the part: a fastener of it, or what it is behind. */
function inTheWay(standing: StandingUnit, id: string, off: BuildSet): string | undefined {
  const { relations, state } = standing;
  const holds = (one: string): boolean => !relations.ridesOn(one, id) && off.overlaps(standing.hold(one, id));
  const fastener = relations.fasteners(id).find(holds);
  if (fastener !== undefined) return fastener;
  const carried = off.and(state.carried(id));
  return relations.behind(id).find((cover) => {
    if (relations.ridesOn(id, cover)) return false;
    const there = relations.ridesOn(cover, id) ? off.and(state.lane(cover).partly) : carried.and(state.inUnit(cover));
    return !there.isEmpty;
  });
}

/** What the part sits on where none of that is in place. */
function missingSeat({ relations, unit, state }: StandingUnit, id: string, off: BuildSet): string | undefined {
  const carriers = relations.carriers(id).filter((one) => off.overlaps(unit.everPresent(one)));
  const isThere = (one: string): boolean => one === unit.base || off.overlaps(state.lane(one).partly);
  return carriers.some(isThere) ? undefined : carriers[0];
}
