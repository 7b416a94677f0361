import { type BuildSet, conditionAtoms } from '../builds';
import type { ByBuild } from '../model/values';
import type { UnitModel } from './unitModel';
import type { Walker } from './walker';

/** A fastener is turned whose hand depends on what nobody has found out yet. */
export function reportUnknownHand(walker: Walker, part: string, where: BuildSet): void {
  const { unit, state } = walker;
  for (const outcome of outcomesOf(unit, unit.part(part)?.hand)) {
    const unknown = where.and(unit.space.outcomeExists(outcome)).minus(state.where('known', outcome));
    if (walker.fail('hand-unknown', part, unknown, { other: outcome })) state.note('known', outcome, unknown);
  }
}

/** What must be found out before a value is known; whether a part was renewed is decided, not found out. */
function outcomesOf(unit: UnitModel, value: ByBuild<unknown> | undefined): readonly string[] {
  if (value?.is !== 'cases') return [];
  const atoms = value.cases.flatMap(({ expr }) => (expr === undefined ? [] : [...conditionAtoms(expr)]));
  const names = atoms.flatMap((atom) => (atom.kind === 'outcome' ? [atom.name] : []));
  return [...new Set(names)].filter((name) => unit.family.value.identify?.some((one) => one.id.id === name));
}
