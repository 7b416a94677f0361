import type {
  ApplyInstruction,
  CleanInstruction,
  MarkInstruction,
} from '../../../server/src/core/model/generated/types';
import type { Unit } from './unit';

const LUBRICANTS = new Set(['oil', 'grease', 'anti-seize', 'assembly-paste']);

export function apply(unit: Unit, id: string, { apply: used, at }: ApplyInstruction): void {
  if (at === undefined) unit.needsReach(id);
  const { facts } = unit;
  const state = unit.of(id);
  for (const { id: consumable } of used ?? []) {
    const kind = facts.procedure.consumables.get(consumable)?.entry.value.kind?.value;
    if (kind === 'threadlocker') {
      if (state.oily) unit.fail('threadlocker-on-oil', id);
      state.threadlocked = true;
      if (state.pieces === 0) state.threadlockBroken = false;
    } else if (kind !== undefined && LUBRICANTS.has(kind)) {
      state.lubricated = true;
      if (at === undefined ? facts.part(id).thread !== undefined : /thread/i.test(at.text)) state.oily = true;
    }
  }
}

export function clean(unit: Unit, id: string, { by, at }: CleanInstruction): void {
  if (at === undefined) unit.needsReach(id);
  const state = unit.of(id);
  const way = by?.value;
  if (way !== undefined && unit.facts.part(id).neverCleanWith?.some(({ value }) => value === way)) {
    unit.fail('cleaning-forbidden', id);
  }
  state.clean = way !== 'blast';
  state.dirty = way === 'blast';
  state.lubricated = false;
  state.oily = false;
  state.threadlocked = false;
  if (state.painted) {
    state.painted = false;
    state.marked = false;
  }
}

/** It is settled now whether the part goes back or a new one is fitted. */
export function decide(unit: Unit, id: string): void {
  const state = unit.of(id);
  state.decided = true;
  if (!unit.facts.isToldAsRenewed(id)) return;
  state.fresh = true;
  state.marked = false;
  state.painted = false;
}

export function mark(unit: Unit, id: string, { by, across }: MarkInstruction): void {
  const others = (across ?? []).map((ref) => ref.id).filter((other) => unit.facts.isMet(other));
  for (const one of [id, ...others]) {
    unit.needsReach(one);
    const state = unit.of(one);
    state.marked = true;
    state.misaligned = false;
    state.painted = by?.value === 'paint';
  }
  for (const other of others) {
    unit.of(id).partners.add(other);
    unit.of(other).partners.add(id);
  }
}

export function align(unit: Unit, id: string, to: readonly { readonly id: string }[]): void {
  for (const one of [id, ...to.map((ref) => ref.id)]) {
    if (!unit.facts.isMet(one)) continue;
    const state = unit.of(one);
    const hasMark = state.marked || unit.facts.part(one).makerMark?.value === true;
    if (state.disturbed && !hasMark) unit.fail('mark-missing', one);
    state.misaligned = false;
  }
}

export function heat(unit: Unit, id: string, to: 'hot' | 'cold'): void {
  const state = unit.of(id);
  state.hot = to === 'hot';
  state.cold = to === 'cold';
}
