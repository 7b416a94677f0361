import { type BuildSet, describeBuilds } from '../builds';
import type { Condition } from '../model/values';
import { kindOf, type Slot } from './slot';

/** A condition that lets builds go is a removal for these; one that only takes more in is an addition. */
export function conditionSlot(slot: Slot): void {
  const { two, before, after, key, compared } = slot;
  const space = two.spaces.after;
  if (!two.spaces.same) {
    slot.tell({ class: 'hurt' });
    return;
  }
  const [old, now] = [metBy(slot, slot.typed.before), metBy(slot, slot.typed.after)];
  const [lost, gained] = [old.minus(now), now.minus(old)];
  if (lost.isEmpty && gained.isEmpty) {
    slot.tell({ class: 'looks', note: 'the same builds' });
    return;
  }
  const words = [
    ...(lost.isEmpty ? [] : [`no more for ${describeBuilds(lost, space) || 'any build'}`]),
    ...(gained.isEmpty ? [] : [`now also for ${describeBuilds(gained, space) || 'all builds'}`]),
  ];
  const told = { class: lost.isEmpty ? 'fits' : 'hurt', note: words.join('; '), where: lost.or(gained) } as const;
  two.tell({ ...told, kind: kindOf(before, after), of: compared.of, key }, before, after);
}

/** The builds that a `when` lets in, or that an `unless` leaves. */
function metBy({ two, key }: Slot, value: unknown): BuildSet {
  const space = two.spaces.after;
  const condition = value as Condition | undefined;
  if (condition === undefined) return space.everything;
  const met = space.set(condition.expr);
  return key === 'unless' ? met.complement() : met;
}
