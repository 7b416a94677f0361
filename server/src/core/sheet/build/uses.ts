import type { BuildSet } from '../../builds';
import type { Condition, StepPlace } from '../sheet';
import type { BuildContext, InstructionUse } from './buildContext';

/** The steps of some instructions, each once, in order. */
export function stepsOf(uses: readonly InstructionUse[]): StepPlace[] {
  const places = new Map(uses.map(({ step, stepId }) => [step, { step, stepId }]));
  return [...places.values()].sort((a, b) => a.step - b.step);
}

/** When something applies, as the part of an object that says it; nothing where it always does. */
export function conditioned(
  where: BuildSet,
  { conditions, picked }: BuildContext,
  known: BuildSet = picked.set,
): { condition?: Condition } {
  const condition = conditions.condition(where, known);
  return condition === undefined ? {} : { condition };
}
