import { type BuildSet, RENEWED } from '../builds';
import type { Act, Walker } from './walker';

/** A part that must go back in the position that it was balanced in comes off without a mark. */
export function reportUnmarked(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { state, unit } = walker;
  if (unit.part(part)?.makerMark?.value === true) return;
  const others = groupMates(walker, part);
  const again = where.and(usedAgain(walker, part)).and(anyUsedAgain(walker, others)).minus(state.lane(part).marked);
  if (walker.fail('mark-missing', part, again, { at: act.at })) state.change(part, again, ['marked']);
}

/** Marks parts to each other: those that are named, and those that the mark runs across to. */
export function mark(walker: Walker, parts: readonly string[], act: Act): void {
  for (const part of parts) {
    walker.state.change(part, walker.meant(part, act), ['marked'], ['misaligned']);
    const partners = walker.state.partners.get(part) ?? new Set<string>();
    for (const other of parts) if (other !== part) partners.add(other);
    walker.state.partners.set(part, partners);
  }
}

export function align(walker: Walker, parts: readonly string[], act: Act): void {
  for (const part of parts) walker.state.change(part, walker.meant(part, act), [], ['misaligned']);
}

/** At the end: what was marked before it came off and is in place again must have been aligned. */
export function reportMisaligned(walker: Walker, part: string): void {
  const { state, unit } = walker;
  const lane = state.lane(part);
  const others = [...(state.partners.get(part) ?? [])];
  const again = usedAgain(walker, part).and(anyUsedAgain(walker, others));
  const where = lane.misaligned.and(lane.partly).and(unit.presence(part, 'finished')).and(again);
  walker.fail('alignment-missing', part, where, { because: walker.lastTime(part, ['fitted'], where) });
}

/** At the end: a group in which some members are new must have been balanced since they were last touched. */
export function reportUnbalanced(walker: Walker): void {
  const { state, unit } = walker;
  for (const { id, value } of unit.family.value.balanceGroups ?? []) {
    const members = (value.members ?? []).filter((ref) => unit.part(ref.id) !== undefined);
    const withNew = unit.space.union(members.map((ref) => fittedNew(walker, ref.id)));
    const missing = withNew.minus(state.valid.get(id.id) ?? unit.space.nothing);
    const last = members
      .flatMap((ref) => walker.lastTime(ref.id, ['fitted'], missing) ?? [])
      .sort((a, b) => b.index - a.index)[0];
    walker.fail('balance-missing', id.id, missing, { because: last });
  }
}

/** The other members of the groups that keep their position. */
function groupMates({ unit }: Walker, part: string): string[] {
  const groups = (unit.family.value.balanceGroups ?? []).filter(
    ({ value }) => value.keepPosition?.value === true && value.members?.some((ref) => ref.id === part) === true,
  );
  return groups.flatMap(({ value }) => (value.members ?? []).map((ref) => ref.id)).filter((id) => id !== part);
}

/** A mark is of use only where the part at its other end is used again as well. */
function anyUsedAgain(walker: Walker, parts: readonly string[]): BuildSet {
  return walker.unit.space.union(parts.map((part) => usedAgain(walker, part)));
}

/** Where the part that comes off goes back again, and is not renewed. */
function usedAgain({ unit }: Walker, part: string): BuildSet {
  if (unit.isAlwaysRenewed(part)) return unit.space.nothing;
  return unit.presence(part, 'finished').and(unit.presence(part, 'received')).minus(renewedOnes(unit.space, part));
}

/** Where a new part is in place: one that the unit did not come with, one always renewed, or one found to need it. */
function fittedNew(walker: Walker, part: string): BuildSet {
  const { state, unit } = walker;
  const lane = state.lane(part);
  const fitted =
    walker.lastTime(part, ['fitted'], unit.space.everything) === undefined ? unit.space.nothing : lane.fitted;
  return fitted.and(lane.fresh.or(renewedOnes(unit.space, part)));
}

function renewedOnes(space: Walker['unit']['space'], part: string): BuildSet {
  return space.set({ kind: 'outcome', name: part, value: RENEWED });
}
