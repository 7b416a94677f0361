import { RANKS, type Rank } from './rank';
import type { StandingUnit } from './rankingState';

/** A fastener that is tight and within reach comes first. */
export function judgeLoosen(unit: StandingUnit, id: string): Rank {
  const { torqued, partly, released } = unit.lane(id);
  const on = unit.meant(id).and(partly);
  if (!unit.isFastener(id)) return { rank: RANKS.pointless };
  if (on.isEmpty) return { rank: RANKS.pointless, why: 'already off' };
  const holds = unit.unit.hasTorque(id) ? on.and(torqued) : on.minus(released);
  if (holds.isEmpty) return { rank: RANKS.pointless, why: 'already loose' };
  const cover = unit.coverOf(id, holds, 'reach');
  if (cover !== undefined) return { rank: RANKS.blocked, why: `behind the ${unit.nameOf(cover)}` };
  return { rank: RANKS.next, why: unit.unit.hasTorque(id) ? 'tight here' : 'in place' };
}

/** What nothing holds on any more comes first, and before the rest what has been loosened for it. */
export function judgeRemove(unit: StandingUnit, id: string): Rank {
  const { partly, released } = unit.lane(id);
  const on = unit.meant(id).and(partly);
  if (on.isEmpty) return { rank: RANKS.pointless, why: 'already off' };
  if (id === unit.unit.base) return { rank: RANKS.pointless, why: 'everything sits on it' };
  const holder = unit.holderOf(id, on);
  if (holder !== undefined) return { rank: RANKS.blocked, why: `held by the ${unit.nameOf(holder)}` };
  const cover = unit.coverOf(id, on, 'removal');
  if (cover !== undefined) return { rank: RANKS.blocked, why: `behind the ${unit.nameOf(cover)}` };
  if (on.overlaps(released)) return { rank: RANKS.next, why: 'loose here' };
  return unit.unit.isTemporary(id) ? { rank: RANKS.next, why: 'must not stay in' } : { rank: RANKS.next };
}

/** What is finger-tight comes first, then what is in place, then the other fasteners. */
export function judgeTighten(unit: StandingUnit, id: string): Rank {
  const { torqued, partly, released } = unit.lane(id);
  if (!unit.isFastener(id)) return { rank: RANKS.pointless };
  const on = unit.meant(id).and(partly);
  if (on.isEmpty) return { rank: RANKS.blocked, why: 'not fitted here' };
  const loose = unit.unit.hasTorque(id) ? on.minus(torqued) : on.and(released);
  if (loose.isEmpty) return { rank: RANKS.possible, why: unit.unit.hasTorque(id) ? 'already tight' : 'in place' };
  return { rank: RANKS.next, why: 'finger-tight here' };
}
