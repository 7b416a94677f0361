import { needsHand, touch } from './touching';
import type { Unit } from './unit';

export function loosen(unit: Unit, id: string): void {
  const state = unit.of(id);
  if (!unit.isInPlace(id)) unit.fail('not-fitted', id);
  unit.needsReach(id);
  needsHand(unit, id);
  if (unit.facts.part(id).renew?.value === 'always' && unit.isTorqued(id)) state.spent = true;
  state.tight = 0;
  state.snug = false;
  state.released = true;
  state.threadlocked = false;
  state.curing = false;
  state.threadlockBroken = true;
  touch(unit, id);
}

export function remove(unit: Unit, id: string, count: number | undefined): void {
  const state = unit.of(id);
  if (!unit.isInPlace(id)) unit.fail('not-fitted', id);
  for (const fastener of unit.facts.fastenersOf(id)) {
    if (unit.holdsFast(fastener, id)) unit.fail('still-fastened', id, fastener);
  }
  if (unit.isInUnit(id)) {
    for (const cover of unit.facts.coversOf(id)) {
      if (unit.isInUnit(cover) && !unit.facts.ridesOn(id, cover)) unit.fail('covered', id, cover);
    }
  }
  if (unit.facts.part(id).thread !== undefined) needsHand(unit, id);
  needsMark(unit, id);
  for (const seal of unit.facts.sealsOf(id)) if (unit.isInPlace(seal)) unit.of(seal).spent = true;
  state.pieces = Math.max(0, state.pieces - (count ?? state.pieces));
  state.tight = Math.min(state.tight, state.pieces);
  if (state.pieces === 0) comesOff(unit, id);
  touch(unit, id);
}

/** Members that keep their position to each other are marked before one of them comes off. */
function needsMark(unit: Unit, id: string): void {
  const { facts } = unit;
  if (facts.part(id).makerMark?.value === true || unit.of(id).marked || !facts.isUsedAgain(id)) return;
  for (const { value } of facts.family.value.balanceGroups ?? []) {
    const members = facts.meant(value.members);
    if (value.keepPosition?.value !== true || !members.includes(id)) continue;
    const other = members.find((member) => member !== id && facts.isUsedAgain(member));
    if (other !== undefined) unit.fail('mark-missing', id, other);
  }
}

function comesOff(unit: Unit, id: string): void {
  const state = unit.of(id);
  const wasOnTrial = state.trial;
  const isAlwaysRenewed = unit.facts.part(id).renew?.value === 'always';
  // What was decided to be renewed while it was still in place is renewed as soon as it is off.
  if (!wasOnTrial) state.fresh = state.decided && unit.facts.isToldAsRenewed(id);
  if (isAlwaysRenewed && !(wasOnTrial && state.fresh)) {
    Object.assign(state, { scrapped: true, fresh: true, marked: false, painted: false });
  }
  for (const fact of LOST_WHEN_OFF) state[fact] = false;
  state.tight = 0;
  state.disturbed = true;
  if (state.marked) state.misaligned = true;
}

const LOST_WHEN_OFF = [
  'snug',
  'released',
  'spent',
  'trial',
  'clean',
  'inspected',
  'lubricated',
  'oily',
  'threadlocked',
  'curing',
  'hot',
  'cold',
  'chosen',
  'threadlockBroken',
] as const;
