import type { ProcedureView } from '../../analysis/procedureView';
import type { CleanInstruction } from '../../model/generated/types';
import type { ItemRange } from '../../syntax/node';

/** The way of cleaning that an instruction names for the part that stands at a place; undefined where it names none. */
export function cleaningAt(
  procedure: ProcedureView | undefined,
  at: ItemRange | undefined,
): NonNullable<CleanInstruction['by']>['value'] | undefined {
  for (const step of procedure?.steps ?? []) {
    if (at !== undefined && step.step.node.item !== at.item) continue;
    for (const { instruction } of step.instructions) {
      if (instruction.verb === 'clean' && instruction.clean?.some((ref) => ref.range === at))
        return instruction.by?.value;
    }
  }
  return undefined;
}
