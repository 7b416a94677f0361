import { type BuildSet, conditionAtoms } from '../builds';
import type { Act, Walker } from './walker';

/** A fastener is turned whose hand depends on what nobody has found out yet. */
export function reportUnknownHand(walker: Walker, part: string, where: BuildSet, act: Act): void {
  const { unit, state } = walker;
  for (const outcome of outcomesOfHand(walker, part)) {
    const unknown = where.and(unit.space.outcomeExists(outcome)).minus(state.known.get(outcome) ?? unit.space.nothing);
    if (walker.fail('hand-unknown', part, unknown, { at: act.at, other: outcome }))
      state.note('known', outcome, unknown);
  }
}

/** What must be found out before the hand is known; whether a part was renewed is decided, not found out. */
function outcomesOfHand({ unit }: Walker, part: string): string[] {
  const hand = unit.part(part)?.hand;
  if (hand?.is !== 'cases') return [];
  const atoms = hand.cases.flatMap(({ expr }) => (expr === undefined ? [] : [...conditionAtoms(expr)]));
  const names = atoms.flatMap((atom) => (atom.kind === 'outcome' ? [atom.name] : []));
  return [...new Set(names)].filter((name) => unit.family.value.identify?.some((one) => one.id.id === name));
}
