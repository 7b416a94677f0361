import { objectRefs } from '../../analysis/instructions';
import type { ProcedureView } from '../../analysis/procedureView';
import type { Instruction } from '../../model/generated/types';
import type { ItemRange } from '../../syntax/node';

/** The instruction that names a part at a place, or whose verb stands there; undefined where there is none. */
export function instructionAt(
  procedure: ProcedureView | undefined,
  at: ItemRange | undefined,
): Instruction | undefined {
  const step = at === undefined ? undefined : procedure?.steps.find((one) => one.step.node.item === at.item);
  return step?.instructions.find(
    ({ instruction }) => instruction.verbKey === at || objectRefs(instruction).some((ref) => ref.range === at),
  )?.instruction;
}
