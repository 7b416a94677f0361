import type { WaitInstruction } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { boundsOf } from '../quantity';
import type { Act, Walker } from './walker';

export function heat(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  walker.state.change(part, where, ['hot'], ['cold']);
  walker.happened('heated', part, where);
}

export function cool(walker: Walker, part: string, act: Act): void {
  walker.state.change(part, walker.meant(part, act), ['cold'], ['hot']);
}

/** Time passes: what was hot or cold is neither, and threadlocker sets where the time is long enough. */
export function wait(walker: Walker, instruction: WaitInstruction, act: Act): void {
  const sets = isCured(walker, instruction);
  for (const id of walker.unit.ids) {
    const { hot, cold, curing } = walker.state.lane(id);
    if (hot.overlaps(act.where) || cold.overlaps(act.where)) walker.state.change(id, act.where, [], ['hot', 'cold']);
    if (sets && curing.overlaps(act.where)) walker.state.change(id, act.where, [], ['curing']);
  }
}

function isCured({ unit }: Walker, { wait: time, of }: WaitInstruction): boolean {
  if (time === undefined) return false;
  if (time.word === 'cure') return true;
  const named = new Set((of ?? []).map((ref) => ref.id));
  const waited = secondsOf(time);
  const cures = [...unit.procedure.consumables].flatMap(([id, { entry }]) => {
    const { kind, cure } = entry.value;
    const isMeant = named.size === 0 ? kind?.value === 'threadlocker' : named.has(id);
    return isMeant && cure !== undefined ? [secondsOf(cure) ?? Number.POSITIVE_INFINITY] : [];
  });
  return waited !== undefined && cures.length > 0 && cures.every((cure) => cure <= waited);
}

function secondsOf({ reading: { quantity } }: QuantityValue): number | undefined {
  return quantity?.dimension === 'time' ? boundsOf(quantity).nominal : undefined;
}
