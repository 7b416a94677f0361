import type { FamilyView } from '../../analysis/familyView';
import { objectIds } from '../../analysis/instructions';
import type { ProcedureView, StepView } from '../../analysis/procedureView';
import { type Place, Scene } from '../../rules/support/walkFixes/scene';
import type { Failure } from '../../walk/failure';
import { walkOf } from '../../walk/walkProcedure';

/** A part that a step takes off or loosens and that nothing in the procedure puts right again. */
export interface TakenApart {
  readonly part: string;
  /** It has to be fitted, or is in place and loose. */
  readonly is: 'off' | 'loose';
  /** The instruction that took it off or loosened it: the first where there are several. */
  readonly place: Place;
  /** It is the only one, so that its conditions are those of the part. */
  readonly isAlone: boolean;
  /** What the walk says of it at the end, with the builds. */
  readonly scene: Scene;
}

/** What a step leaves apart when the work is over, the last thing that it did first. */
export function takenApart(procedure: ProcedureView, family: FamilyView, step: StepView): TakenApart[] {
  const failures = walkOf(procedure)?.failures ?? [];
  const found = new Map<string, TakenApart>();
  for (const { instruction, nested } of step.instructions.toReversed()) {
    if (nested || (instruction.verb !== 'remove' && instruction.verb !== 'loosen')) continue;
    const is = instruction.verb === 'remove' ? 'off' : 'loose';
    for (const part of objectIds(instruction).toReversed()) {
      const known = found.get(part);
      if (known?.is === is) found.set(part, { ...known, isAlone: false });
      if (known !== undefined) continue;
      const scene = failures
        .filter((one) => mayLeave(one, part, is))
        .map((one) => new Scene(procedure, family, one))
        .find(leavesIt);
      const place = scene?.placeOf(instruction.node);
      if (scene !== undefined && place !== undefined) found.set(part, { part, is, place, isAlone: true, scene });
    }
  }
  return [...found.values()];
}

/** What is off shows at the end of the work, or where the fastener that is to hold it is tightened, or it is itself. */
function mayLeave({ cause, about, other }: Failure, part: string, is: TakenApart['is']): boolean {
  if (is === 'loose') return cause === 'left-loose' && about === part;
  if (cause === 'nothing-held') return other === part;
  return about === part && (cause === 'left-off' || cause === 'not-fitted');
}

/** What is loosened or taken off a second time was put on before. */
function leavesIt({ failure, showing }: Scene): boolean {
  const verb = showing?.view.instruction.verb;
  return failure.cause !== 'not-fitted' || verb === 'tighten' || verb === 'seat';
}
