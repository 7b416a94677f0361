import { conditionAtoms } from '../builds';
import type { Condition } from '../model/values';
import type { ItemRange } from '../syntax/node';
import type { UnitModel } from './unitModel';
import type { Act, Walker } from './walker';

/** A condition that looks at what the bench must find out, or decide, first. */
export interface Asked {
  readonly outcome: string;
  readonly at: ItemRange;
}

interface Conditional {
  readonly when?: Condition;
  readonly unless?: Condition;
}

/** The outcomes that the conditions of a phase, step or instruction look at. */
export function askedBy(...owners: readonly Conditional[]): readonly Asked[] {
  return owners.flatMap(({ when, unless }) => [when, unless].flatMap((one) => (one === undefined ? [] : askedIn(one))));
}

function askedIn({ names }: Condition): Asked[] {
  return names.flatMap(({ node, expr }) =>
    expr === undefined
      ? []
      : [...conditionAtoms(expr)].flatMap((atom) =>
          atom.kind === 'outcome' ? [{ outcome: atom.name, at: node }] : [],
        ),
  );
}

/** Tells what nobody can know yet; then it counts as known, so that it is told once. */
export function reportUndecided(walker: Walker, act: Act, asked: readonly Asked[]): void {
  const { state, unit } = walker;
  for (const [place, { outcome }] of asked.entries()) {
    const open = unit.space.dependsOn(act.where, outcome);
    const isPart = isRenewable(unit, outcome);
    const missing = open.minus(isPart ? state.lane(outcome).decided : state.where('known', outcome));
    if (!walker.fail('undecided-yet', outcome, missing, { asked: place })) continue;
    if (isPart) state.change(outcome, missing, ['decided']);
    else state.note('known', outcome, missing);
  }
}

function isRenewable(unit: UnitModel, outcome: string): boolean {
  return unit.part(outcome) !== undefined && unit.family.value.identify?.some((one) => one.id.id === outcome) !== true;
}
