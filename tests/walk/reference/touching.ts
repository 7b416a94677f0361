import type { Unit } from './unit';
import { holdsIn } from './world';

/** What rests on a part that is touched counts no more. */
export function touch(unit: Unit, id: string): void {
  const { family } = unit.facts;
  for (const limit of family.value.limits ?? []) touchResult(unit, limit.id.id, limit.value.voidBy, id);
  for (const check of family.value.checks ?? []) touchResult(unit, check.id.id, check.value.after, id);
  for (const group of family.value.balanceGroups ?? []) {
    const members = unit.facts.meant(group.value.members);
    const concerned = members.filter((member) => member === id || unit.facts.fastenersOf(member).includes(id));
    const kept = group.value.keepPosition?.value === true && concerned.every((member) => unit.of(member).marked);
    if (concerned.length > 0 && !kept) unit.result(group.id.id).valid = false;
  }
}

function touchResult(unit: Unit, result: string, causes: Parameters<Unit['facts']['meant']>[0], id: string): void {
  if (!unit.facts.meant(causes).includes(id)) return;
  unit.result(result).valid = false;
  unit.result(result).due = true;
}

/** The hand of a thread depends on what the bench has not found out yet. */
export function needsHand(unit: Unit, id: string): void {
  const { hand } = unit.facts.part(id);
  if (hand === undefined || hand.is === 'one') return;
  const { space } = unit.facts.procedure;
  const own = hand.cases.find(({ expr }) => expr !== undefined && holdsIn(space.set(expr), unit.facts.world));
  if (own?.expr === undefined) return;
  for (const outcome of space.outcomesOf(space.set(own.expr))) {
    if (!isKnown(unit, outcome)) unit.fail('hand-unknown', id, outcome);
  }
}

/** Found on the bench, or decided, for a part that is used again or renewed. */
export function isKnown(unit: Unit, outcome: string): boolean {
  const part = unit.facts.family.part(outcome);
  if (part?.renew?.value !== 'on-condition') return unit.known.has(outcome);
  return unit.parts.get(outcome)?.decided === true;
}
