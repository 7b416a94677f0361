import type { BuildSet } from '../../builds';
import { type JudgePart, RANKS, type Rank } from './rank';
import type { StandingUnit } from './rankingState';
import { isUnmet, NOT_YET, wantsOf } from './rankingWants';

/** What the family asks before fitting, by what does it. */
const WANT_OF: Readonly<Record<string, string>> = {
  clean: 'clean',
  inspect: 'inspect',
  heat: 'heat',
  cool: 'cool',
};

const OTHERS: Readonly<Record<string, JudgePart>> = {
  mark: judgeMark,
  'mark across': (unit, id) => judgeInPlace(unit, id),
  align: judgeAlign,
  'align to': (unit, id) => judgeInPlace(unit, id),
  'press to': (unit, id) => judgeInPlace(unit, id),
  'apply to': judgeApply,
  adjust: (unit, id) => preferred((unit.unit.part(id)?.lockedBy ?? []).length > 0, 'can be adjusted'),
  choose: (unit, id) => preferred(unit.unit.part(id)?.sizes !== undefined, 'comes in sizes'),
  replace: judgeReplace,
  discard: judgeReplace,
  send: judgeLeaving,
  return: judgeLeaving,
  receive: (unit, id) => preferred(unit.meant(id).overlaps(unit.lane(id).away), 'sent out'),
};

/** How parts are judged that are worked on where they lie; undefined where a verb, or a key of it, names no part. */
export function judgeHandling(verb: string): JudgePart | undefined {
  const want = WANT_OF[verb];
  return want === undefined ? OTHERS[verb] : (unit, id) => judgeWanted(unit, id, want);
}

function preferred(isFirst: boolean, why: string): Rank {
  return isFirst ? { rank: RANKS.next, why } : { rank: RANKS.pointless };
}

/** What is off and asks for it comes first, then what lies open, then what is covered or done. */
function judgeWanted(unit: StandingUnit, id: string, want: string): Rank {
  const meant = unit.meant(id);
  const off = meant.minus(unit.lane(id).partly);
  const isAsked = wantsOf(unit, id).includes(want);
  if (isAsked && !off.isEmpty && isUnmet(unit, id, want, off)) return { rank: RANKS.next, why: NOT_YET[want] ?? '' };
  const cover = unit.coverOf(id, meant, 'reach');
  if (cover !== undefined) return { rank: RANKS.blocked, why: `behind the ${unit.nameOf(cover)}` };
  if (!isUnmet(unit, id, want, meant)) return { rank: RANKS.pointless, why: DONE[want] ?? '' };
  return off.isEmpty ? { rank: RANKS.possible, why: 'in place' } : { rank: RANKS.possible, why: 'off here' };
}

const DONE: Readonly<Record<string, string>> = {
  clean: 'already clean',
  inspect: 'already inspected',
  heat: 'already hot',
  cool: 'already cold',
};

/** Whether oil or threadlocker is put on is not asked: what wants either comes first. */
function judgeApply(unit: StandingUnit, id: string): Rank {
  const meant = unit.meant(id);
  const off = meant.minus(unit.lane(id).fitted);
  const wants = wantsOf(unit, id).filter((one) => one === 'lubricate' || one === 'threadlock');
  const open = wants.find((want) => isUnmet(unit, id, want, off));
  if (open !== undefined && !off.isEmpty) return { rank: RANKS.next, why: NOT_YET[open] ?? '' };
  const cover = unit.coverOf(id, meant, 'reach');
  if (cover !== undefined) return { rank: RANKS.blocked, why: `behind the ${unit.nameOf(cover)}` };
  return off.isEmpty ? { rank: RANKS.possible, why: 'in place' } : { rank: RANKS.possible, why: 'off here' };
}

/** What must keep its position is marked before it comes off. */
function judgeMark(unit: StandingUnit, id: string): Rank {
  const { partly, marked } = unit.lane(id);
  const on = unit.meant(id).and(partly);
  if (on.isEmpty) return { rank: RANKS.pointless, why: 'already off' };
  if (on.minus(marked).isEmpty) return { rank: RANKS.pointless, why: 'already marked' };
  const cover = unit.coverOf(id, on, 'reach');
  if (cover !== undefined) return { rank: RANKS.blocked, why: `behind the ${unit.nameOf(cover)}` };
  return keepsPosition(unit, id) ? { rank: RANKS.next, why: 'keeps its position' } : { rank: RANKS.possible };
}

function keepsPosition({ unit, relations }: StandingUnit, id: string): boolean {
  const groups = unit.family.value.balanceGroups ?? [];
  return relations
    .groupsOf(id)
    .some((group) => groups.find((one) => one.id.id === group)?.value.keepPosition?.value === true);
}

/** What bears a mark and came off is aligned as it goes back. */
function judgeAlign(unit: StandingUnit, id: string): Rank {
  const { misaligned, partly, marked } = unit.lane(id);
  const meant = unit.meant(id);
  if (meant.overlaps(misaligned)) return { rank: RANKS.next, why: inPlaceWord(meant.and(partly), 'marked') };
  if (!meant.overlaps(marked) && unit.unit.part(id)?.makerMark?.value !== true)
    return { rank: RANKS.blocked, why: 'not marked' };
  return { rank: RANKS.possible, why: 'marked' };
}

function inPlaceWord(on: BuildSet, word: string): string {
  return on.isEmpty ? `${word}, off here` : `${word}, in place`;
}

function judgeInPlace(unit: StandingUnit, id: string): Rank {
  const on = unit.meant(id).and(unit.lane(id).partly);
  return on.isEmpty && id !== unit.unit.base
    ? { rank: RANKS.possible, why: 'off here' }
    : { rank: RANKS.next, why: 'in place' };
}

/** What is renewed on condition can be decided about. */
function judgeReplace(unit: StandingUnit, id: string): Rank {
  const renew = unit.unit.part(id)?.renew?.value;
  if (renew === 'on-condition') return { rank: RANKS.next, why: 'renewed on condition' };
  return renew === 'always' ? { rank: RANKS.possible, why: 'always renewed' } : { rank: RANKS.blocked };
}

/** Only what is off can leave the bench. */
function judgeLeaving(unit: StandingUnit, id: string): Rank {
  const on = unit.meant(id).and(unit.state.inUnit(id));
  return on.isEmpty ? { rank: RANKS.next, why: 'off here' } : { rank: RANKS.blocked, why: 'still in the unit' };
}
