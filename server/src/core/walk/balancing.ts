import type { BuildSet } from '../builds';
import type { Act, Walker } from './walker';

/** Before a group is spun: the fasteners of its members that are in place must be tight, and their threadlocker set. */
export function reportSpun(walker: Walker, group: string, act: Act): void {
  const { state, unit } = walker;
  const { relations } = unit;
  for (const member of relations.membersOf(group)) {
    const there = act.where.and(state.lane(member).partly);
    for (const fastener of relations.fasteners(member)) {
      const { partly, torqued, curing } = state.lane(fastener);
      const inPlace = there.and(partly);
      const details = { other: fastener, blame: ['fitted', 'loosened', 'tightened'] as const };
      walker.fail('spun-loose', group, inPlace.minus(torqued), details);
      const wet = inPlace.and(torqued).and(curing);
      if (walker.fail('spun-uncured', group, wet, { other: fastener, blame: ['tightened'] }))
        state.change(fastener, wet, [], ['curing']);
    }
  }
}

/** At the end: a group in which some members are new must have been balanced since they were last moved. */
export function reportUnbalanced(walker: Walker, alive: BuildSet): void {
  const { state, unit } = walker;
  for (const { id } of unit.family.value.balanceGroups ?? []) {
    const members = unit.relations.membersOf(id.id);
    const withNew = unit.space.union(members.map((member) => fittedNew(walker, member))).and(alive);
    const missing = withNew.minus(state.where('valid', id.id));
    const blamed = members.find((member) => fittedNew(walker, member).overlaps(missing));
    walker.fail('balance-missing', id.id, missing, blamed === undefined ? {} : { blame: ['fitted'], blamed });
  }
}

/** Where a new part was fitted: one that the unit did not come with, or one that was renewed. */
export function fittedNew({ state, unit }: Walker, part: string): BuildSet {
  const { handled, fitted, fresh } = state.lane(part);
  return handled.and(fitted).and(fresh.or(unit.renewed(part)));
}
