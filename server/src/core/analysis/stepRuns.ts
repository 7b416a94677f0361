import type { Instruction } from '../model/generated/types';
import type { InstructionView, ProcedureView, StepView } from './procedureView';
import { type KnownRuns, keptWith, type Run, runsOf } from './runs';

export type StepRun = Run<StepView>;

const known: KnownRuns<StepView> = new WeakMap();
const remembered = new WeakMap<ProcedureView, readonly StepRun[]>();

/** The steps of a procedure in runs that stay the same objects; no run reaches over the end of a phase. */
export function stepRunsOf(procedure: ProcedureView): readonly StepRun[] {
  const already = remembered.get(procedure);
  if (already !== undefined) return already;
  const runs = procedure.phases.flatMap((phase) => runsOf(phase.steps, known));
  remembered.set(procedure, runs);
  return runs;
}

/** An instruction with the step that it stands in. */
export interface InstructionPlace {
  readonly step: StepView;
  readonly view: InstructionView;
}

const placesByVerb = gatherer((steps) => {
  const places = new Map<Instruction['verb'], InstructionPlace[]>();
  for (const step of steps) {
    for (const view of step.instructions) {
      const { verb } = view.instruction;
      const known = places.get(verb);
      if (known === undefined) places.set(verb, [{ step, view }]);
      else known.push({ step, view });
    }
  }
  return places;
});

/** Every instruction of a verb, in the order of the text. */
export function placesOf(procedure: ProcedureView, verb: Instruction['verb']): InstructionPlace[] {
  return placesByVerb(procedure).flatMap((places) => places.get(verb) ?? []);
}

/**
 * Makes a function that gathers something from each run of steps. `make` may look at the steps, their builds and the
 * family; all else that it looks at is what `by` gives, one object that stays the same while that does. It must not hold
 * on to the procedure, which is another one after the next key.
 */
export function gatherer<Value>(
  make: (steps: readonly StepView[], procedure: ProcedureView) => Value,
  by: (procedure: ProcedureView) => unknown = () => undefined,
): (procedure: ProcedureView) => readonly Value[] {
  return (procedure) => {
    const around = by(procedure);
    return stepRunsOf(procedure).map((run) => keptWith(run, make, around, () => make(run.things, procedure)));
  };
}
