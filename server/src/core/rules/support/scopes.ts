import { conditionOf, type FamilyView } from '../../analysis/familyView';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Unit } from '../../model/facts';
import type { Condition } from '../../model/values';
import type { RuleContext } from '../ruleContext';
import { knownSpace } from './conditionNames';

/** Where the values of a unit are looked at, with the space that it lies in. */
export interface Scope {
  readonly space: BuildSpace;
  readonly set: BuildSet;
}

/**
 * The builds that a unit serves: those that have the part, those that the instruction is for. Undefined where the
 * family cannot be read.
 */
export function scopeOf(
  unit: Unit,
  ctx: Pick<RuleContext, 'family' | 'procedure' | 'step' | 'instruction'>,
): Scope | undefined {
  const space = knownSpace(ctx);
  if (space === undefined || ctx.family === undefined) return undefined;
  const { instruction, step, family } = ctx;
  if (instruction !== undefined && instruction.instruction === unit.value) return { space, set: instruction.where };
  if (step !== undefined && step.step === unit.value) return { space, set: step.where };
  const part = unit.def === 'family/part' ? idOfPart(family, unit.value) : undefined;
  if (part !== undefined) return { space, set: family.presence(part, space) };
  return { space, set: space.set(conditionOf(unit.value as { when?: Condition; unless?: Condition })) };
}

const partIds = new WeakMap<FamilyView, Map<unknown, string>>();

function idOfPart(family: FamilyView, part: unknown): string | undefined {
  const known = partIds.get(family) ?? new Map([...family.parts].map(([id, entry]) => [entry.value as unknown, id]));
  partIds.set(family, known);
  return known.get(part);
}
