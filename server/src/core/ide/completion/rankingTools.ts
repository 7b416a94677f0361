import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import type { Instruction, Tool } from '../../model/generated/types';
import { listedTools } from '../../workings/toolNamed';
import type { Rank } from './rank';
import { judgeByKind } from './rankingToolKinds';
import { judgeBySize } from './rankingToolSizes';

/** Makes a judge of tools for an instruction; the judge says nothing about tools that it knows nothing of. */
export type ToolJudge = (tool: Tool) => Rank | undefined;

/** What a tool is ranked that nothing speaks for or against. */
const UNJUDGED: Rank = { rank: 2 };

/**
 * Which tools of the stores make sense behind `with` of an instruction: those that fit what it turns, reach its torque or
 * suit what it measures; of equals those that the procedure lists already. Even ranks are listed, odd ones are not.
 */
export function toolRanking(
  procedure: ProcedureView,
  step: StepView,
  instruction: Instruction,
): ReadonlyMap<string, Rank> {
  const view = viewOf(procedure, step, instruction);
  const listed = listedTools(procedure);
  const judges = [judgeBySize(procedure, view), judgeByKind(procedure, view)];
  return new Map(
    [...procedure.tools].map(([id, { entry }]) => {
      const { rank, ...rest } = best(judges.flatMap((judge) => judge(entry.value) ?? []));
      return [id, { rank: 2 * rank + (listed.has(id) ? 0 : 1), ...rest }];
    }),
  );
}

/** The first judge that has something to say counts. */
function best(ranks: readonly Rank[]): Rank {
  return ranks[0] ?? UNJUDGED;
}

function viewOf(procedure: ProcedureView, step: StepView, instruction: Instruction): InstructionView {
  const current = procedure.steps.find((one) => one.step === step.step) ?? step;
  const known = current.instructions.find((one) => one.instruction === instruction);
  return known ?? { instruction, where: current.where, nested: false };
}
