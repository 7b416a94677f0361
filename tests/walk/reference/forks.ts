import type { ProcedureView, StepView } from '../../../server/src/core/analysis/procedureView';
import type { Instruction } from '../../../server/src/core/model/generated/types';

/** The forks of a procedure with their numbers, in the order of the document. */
export function forksOf(procedure: ProcedureView): ReadonlyMap<Instruction | StepView, number> {
  const forks = new Map<Instruction | StepView, number>();
  for (const view of procedure.steps) {
    if (view.step.optional?.value === true) forks.set(view, forks.size);
    for (const { instruction } of view.instructions) if (isFork(instruction)) forks.set(instruction, forks.size);
  }
  return forks;
}

function isFork(instruction: Instruction): boolean {
  const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
  return ifNot?.goTo !== undefined || (ifNot?.do?.length ?? 0) > 0;
}
