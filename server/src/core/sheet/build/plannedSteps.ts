import { conditionOf } from '../../analysis/familyView';
import type { InstructionView, ProcedureView, StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Phase } from '../../model/generated/types';
import type { Condition as WrittenCondition } from '../../model/values';
import type { StepPlace } from '../sheet';

/** An instruction with the builds and outcomes of the sheet that it holds for. */
export type UseHere = Pick<InstructionView, 'instruction' | 'where'>;

/** What the sheets of one build have of a step. It is the same object as long as step and build are the same. */
export interface StepHere {
  readonly view: StepView;
  /** A step of which no instruction holds is on none of them. */
  readonly isOnSheet: boolean;
  readonly where: BuildSet;
  readonly inPhase: BuildSet;
  /** Its instructions, those of other builds left out. */
  readonly uses: readonly UseHere[];
  /** Outcomes that the conditions of the step and of its instructions ask for. */
  readonly outcomes: readonly string[];
}

/** A step that is on the sheet. It is the same object as long as its number is the same too. */
export interface PlannedStep {
  readonly here: StepHere;
  readonly id: string;
  readonly number: number;
  readonly place: StepPlace;
}

export interface PlannedPhase {
  readonly phase: Phase;
  readonly steps: readonly PlannedStep[];
}

/** The steps of the build in order, numbered through, and what conditions there are beside them. */
export interface Plan {
  readonly phases: readonly PlannedPhase[];
  readonly steps: readonly PlannedStep[];
  /** Every outcome that a condition asks for, also of a step that is not on the sheet. */
  readonly outcomes: ReadonlySet<string>;
}

interface Conditional {
  readonly when?: WrittenCondition;
  readonly unless?: WrittenCondition;
}

/** Where something holds within what is known; without the family nobody can tell, so a condition narrows nothing. */
export function within(known: BuildSet, owner: Conditional, procedure: ProcedureView): BuildSet {
  if (procedure.family === undefined || (owner.when === undefined && owner.unless === undefined)) return known;
  return known.and(procedure.space.set(conditionOf(owner)));
}

export function planSteps(procedure: ProcedureView, set: BuildSet): Plan {
  const steps: PlannedStep[] = [];
  const outcomes = new Set<string>();
  const phases = procedure.phases.map(({ phase, steps: views }): PlannedPhase => {
    const first = steps.length;
    for (const view of views) {
      const here = stepHere(view, set, procedure);
      for (const id of here.outcomes) outcomes.add(id);
      if (here.isOnSheet) steps.push(numbered(here, steps.length + 1));
    }
    return { phase, steps: steps.slice(first) };
  });
  return { phases, steps, outcomes };
}

/** A set belongs to one space, and a space to one family: nothing else decides what a build has of a step. */
const stepsOfBuild = new WeakMap<BuildSet, WeakMap<StepView, StepHere>>();

function stepHere(view: StepView, set: BuildSet, procedure: ProcedureView): StepHere {
  const known = stepsOfBuild.get(set) ?? new WeakMap<StepView, StepHere>();
  stepsOfBuild.set(set, known);
  const already = known.get(view);
  if (already !== undefined) return already;
  const here = lookAt(view, set, procedure);
  known.set(view, here);
  return here;
}

function lookAt(view: StepView, set: BuildSet, { space }: ProcedureView): StepHere {
  const where = view.where.and(set);
  const views = view.instructions.filter((one) => one.where.overlaps(set));
  const asked = [...(where.isEmpty ? [] : [view]), ...views].flatMap((one) => space.outcomesOf(one.where));
  return {
    view,
    isOnSheet: !where.isEmpty && (view.instructions.length === 0 || views.length > 0),
    where,
    inPhase: view.phaseWhere.and(set),
    uses: views.map((one) => ({ instruction: one.instruction, where: one.where.and(set) })),
    outcomes: [...new Set(asked)],
  };
}

const lastNumbered = new WeakMap<StepHere, PlannedStep>();

function numbered(here: StepHere, number: number): PlannedStep {
  const id = here.view.step.step?.id ?? `step-${number}`;
  const last = lastNumbered.get(here);
  if (last?.number === number && last.id === id) return last;
  const planned = { here, id, number, place: { step: number, stepId: id } };
  lastNumbered.set(here, planned);
  return planned;
}
