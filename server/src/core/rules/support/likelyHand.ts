import type { FamilyView } from '../../analysis/familyView';
import { heldValues } from '../../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Part } from '../../model/generated/types';
import { type Hand, handInDesignation } from './handOfThread';

/** A hand that something else of the family states for the same thread. */
export interface LikelyHand {
  readonly hand: Hand;
  /** What states it: the name of a mating part, or the designation of the thread. */
  readonly as: string;
}

/** What the designation of the thread, or else every part that is screwed to it, says of its hand on some builds. */
export function likelyHand(
  family: FamilyView,
  id: string,
  part: Part,
  space: BuildSpace,
  within: BuildSet,
): LikelyHand | undefined {
  const marks = heldValues(part.thread, space, within).held.map(({ value }) => handInDesignation(value.text));
  const mark = one(marks);
  if (mark !== undefined) return { hand: mark, as: 'its designation' };
  const mates = matesOf(family, id, part);
  const hands = mates.map((mate) => handOf(family.part(mate), space, within));
  const hand = one(hands);
  const [first] = mates;
  return hand === undefined || first === undefined ? undefined : { hand, as: `the ${family.nameOf(first)}` };
}

function matesOf(family: FamilyView, id: string, part: Part): string[] {
  const own = (part.matesWith ?? []).map((ref) => ref.id);
  const others = [...family.parts].flatMap(([other, { value }]) =>
    value.matesWith?.some((ref) => ref.id === id) === true ? [other] : [],
  );
  return [...new Set([...own, ...others])];
}

/** The one hand of a part, where it has the same on all of these builds. */
function handOf(part: Part | undefined, space: BuildSpace, within: BuildSet): Hand | undefined {
  const { held, absent } = heldValues(part?.hand, space, within);
  return absent.isEmpty ? one(held.map(({ value }) => value.value)) : undefined;
}

/** What all agree on. */
function one(hands: readonly (Hand | undefined)[]): Hand | undefined {
  const [first, ...more] = new Set(hands);
  return more.length === 0 ? first : undefined;
}
