import type { BuildSet } from '../builds';
import type { AlignInstruction, MarkInstruction } from '../model/generated/types';
import { reportReach } from './reach';
import type { Act, Walker } from './walker';

/** A part that must go back in the position that it was balanced in comes off without a mark. */
export function reportUnmarked(walker: Walker, part: string, where: BuildSet): void {
  const { state, unit } = walker;
  if (unit.part(part)?.makerMark?.value === true) return;
  const others = groupMates(walker, part);
  if (others.length === 0) return;
  const again = where.and(unit.usedAgain(part)).and(anyUsedAgain(walker, others)).minus(state.lane(part).marked);
  if (walker.fail('mark-missing', part, again)) state.change(part, again, ['marked']);
}

/** Marks parts to each other: those that are named, and those that the mark runs across to. */
export function mark(walker: Walker, instruction: MarkInstruction, act: Act): void {
  const parts = known(walker, [...(instruction.mark ?? []), ...(instruction.across ?? [])]);
  const painted = instruction.by?.value === 'paint';
  for (const part of parts) {
    const where = walker.meant(part, act);
    reportReach(walker, part, where);
    walker.state.change(
      part,
      where,
      painted ? ['marked', 'painted'] : ['marked'],
      painted ? ['misaligned'] : ['misaligned', 'painted'],
    );
    for (const other of parts) if (other !== part) walker.state.addPartner(part, other, where);
    walker.happened('marked', part, where);
  }
}

/** Brings parts to their marks. What came off must still bear one. */
export function align(walker: Walker, instruction: AlignInstruction, act: Act): void {
  const { state, unit } = walker;
  for (const part of known(walker, [...(instruction.align ?? []), ...(instruction.to ?? [])])) {
    const where = walker.meant(part, act);
    const { disturbed, marked } = state.lane(part);
    if (unit.part(part)?.makerMark?.value !== true) {
      const unmarked = where.and(disturbed).minus(marked);
      walker.fail('mark-missing', part, unmarked, { blame: ['cleaned', 'removed'] });
    }
    state.change(part, where, [], ['misaligned']);
  }
}

/** At the end: what was marked before it came off and is in place again must have been aligned. */
export function reportMisaligned(walker: Walker, part: string, alive: BuildSet): void {
  const { state, unit } = walker;
  const { misaligned, partly } = state.lane(part);
  const where = misaligned.and(partly).and(alive).and(unit.presence(part, 'finished'));
  if (where.isEmpty) return;
  const partners = [...state.partners(part)].map(([other, there]) => there.and(unit.usedAgain(other)));
  const again = unit.usedAgain(part).and(unit.space.union(partners));
  walker.fail('alignment-missing', part, where.and(again), { blame: ['fitted'] });
}

/** The other members of the groups that keep their position. */
function groupMates({ unit }: Walker, part: string): readonly string[] {
  const { relations, family } = unit;
  const keeping = relations
    .groupsOf(part)
    .filter(
      (group) => family.value.balanceGroups?.find((one) => one.id.id === group)?.value.keepPosition?.value === true,
    );
  return keeping.flatMap((group) => relations.membersOf(group)).filter((id) => id !== part);
}

/** A mark is of use only where the part at its other end is used again as well. */
function anyUsedAgain({ unit }: Walker, parts: readonly string[]): BuildSet {
  return unit.space.union(parts.map((part) => unit.usedAgain(part)));
}

function known({ unit }: Walker, refs: readonly { readonly id: string }[]): string[] {
  return [...new Set(refs.map((ref) => ref.id))].filter((id) => unit.part(id) !== undefined);
}
