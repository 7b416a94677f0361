import { type HeldValue, heldValues } from '../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../builds';
import type { Part } from '../model/generated/types';
import { type Hand, handInDesignation } from '../rules/support/handOfThread';

/** The hand of a part's thread by build: as it is stated, else as its designation marks it. None is assumed. */
export function handsOf(part: Part, space: BuildSpace, within: BuildSet): HeldValue<Hand>[] {
  const stated = heldValues(part.hand, space, within);
  const marked = heldValues(part.thread, space, part.hand === undefined ? within : stated.absent);
  const hands = [
    ...stated.held.map(({ value, where }) => ({ value: value.value, where })),
    ...marked.held.map(({ value, where }) => ({ value: handInDesignation(value.text), where })),
  ];
  return (['right', 'left'] as const).flatMap((hand) => {
    const where = space.union(hands.flatMap((one) => (one.value === hand ? [one.where] : [])));
    return where.isEmpty ? [] : [{ value: hand, where }];
  });
}
