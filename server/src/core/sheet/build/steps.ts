import { conditionOf } from '../../analysis/familyView';
import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Phase, Step } from '../../model/generated/types';
import type { Prose, Condition as WrittenCondition } from '../../model/values';
import type {
  Caution,
  LooseEnd,
  SheetFinding,
  Instruction as SheetInstruction,
  SheetLanguage,
  SheetPhase,
  SheetStep,
} from '../sheet';
import type { BuildContext } from './buildContext';
import { cautionsOf } from './cautions';
import { figuresOf } from './figures';
import { shownFinding } from './findings';
import { instructionsFor, type Memory } from './instructions';

/** A step that is on the sheet: where it holds, and where its phase does. */
export interface PlannedStep {
  readonly step: Step;
  readonly phase: Phase;
  readonly id: string;
  readonly number: number;
  readonly where: BuildSet;
  readonly inPhase: BuildSet;
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

/** The steps of the build in order, numbered through. A step of which no instruction holds is left out. */
export function planSteps(procedure: ProcedureView, set: BuildSet): PlannedStep[] {
  const planned: PlannedStep[] = [];
  for (const phase of procedure.value.phases ?? []) {
    const inPhase = within(set, phase, procedure);
    for (const step of phase.steps ?? []) {
      const where = within(inPhase, step, procedure);
      const instructions = step.do ?? [];
      const empty = instructions.length > 0 && instructions.every((one) => within(where, one, procedure).isEmpty);
      if (where.isEmpty || empty) continue;
      const number = planned.length + 1;
      planned.push({ step, phase, id: step.step?.id ?? `step-${number}`, number, where, inPhase });
    }
  }
  return planned;
}

export function phasesOf(
  planned: readonly PlannedStep[],
  memory: Memory,
  loose: ReadonlyMap<Phase, LooseEnd[]>,
  context: BuildContext,
): SheetPhase[] {
  const phases = (context.procedure.value.phases ?? []).map((phase) => {
    const steps = planned.filter((one) => one.phase === phase);
    return { phase, steps };
  });
  return phases.flatMap(({ phase, steps }) => {
    const [first] = steps;
    if (first === undefined) return [];
    const condition = context.conditions.condition(first.inPhase, context.picked.set);
    const sheetSteps = steps.map((one) =>
      stepOf(one, one === first ? cautionsOf(phase, context) : [], memory, context),
    );
    const title = context.names.written(phase.phase) ?? '';
    const looseEnds = loose.get(phase) ?? [];
    return [
      {
        title,
        ...titleLang(phase.phase, context),
        ...(condition === undefined ? {} : { condition }),
        steps: sheetSteps,
        looseEnds,
      },
    ];
  });
}

/** What the phase warns of stands at its first step, before the act. */
function stepOf(one: PlannedStep, fromPhase: readonly Caution[], memory: Memory, context: BuildContext): SheetStep {
  const { step, id, number, where, inPhase } = one;
  const figures = figuresOf([...(step.figure ?? []), ...furtherFigures(step)], context);
  const all = (step.do ?? []).flatMap((each) => instructionsFor(each, where, memory, context));
  const instructions = figures.length === 0 ? all : all.map(withoutPicture);
  const condition = context.conditions.condition(where, inPhase);
  const sign = step.sign?.value;
  return {
    id,
    number,
    title: context.names.written(step.title) ?? id,
    ...titleLang(step.title, context),
    source: { uri: context.document.uri, offset: context.document.spanOf(step.node).start },
    ...(condition === undefined ? {} : { condition }),
    optional: step.optional?.value === true,
    ...(context.options.changed?.steps.has(step.step?.id ?? '') === true ? { changed: true as const } : {}),
    people: Math.max(1, step.people?.value ?? 1),
    ...(sign === undefined ? {} : { sign: context.writing.phrases.signer(sign) }),
    cautions: [...fromPhase, ...cautionsOf(step, context)],
    figures,
    instructions,
    notes: [],
    findings: findingsAt(id, context),
  };
}

/** A drawing of the writer shows the pieces as they are; ours must not contradict it. */
function withoutPicture(instruction: SheetInstruction): SheetInstruction {
  const { torque } = instruction;
  if (torque?.grid?.picture === undefined) return instruction;
  const { picture: _, ...grid } = torque.grid;
  return { ...instruction, torque: { ...torque, grid } };
}

function titleLang(title: Prose | undefined, { names }: BuildContext): { titleLang?: SheetLanguage } {
  const language = title && names.otherLanguageOf(title);
  return language === undefined ? {} : { titleLang: language };
}

/** An instruction shows one figure; those it names beyond that stand at the step. */
function furtherFigures(step: Step) {
  return (step.do ?? []).flatMap((one) => (one.figure ?? []).slice(1));
}

function findingsAt(id: string, { options }: BuildContext): SheetFinding[] {
  return options.findings.filter((finding) => finding.step === id).map(shownFinding);
}

/** Every instruction of the sheet with its step, those for the case that something is wrong behind their own. */
export function* instructionsIn(
  phases: readonly SheetPhase[],
): Generator<{ step: SheetStep; instruction: SheetInstruction }> {
  function* all(instructions: readonly SheetInstruction[]): Generator<SheetInstruction> {
    for (const one of instructions) {
      yield one;
      yield* all(one.ifNot?.instructions ?? []);
    }
  }
  for (const phase of phases) {
    for (const step of phase.steps) for (const instruction of all(step.instructions)) yield { step, instruction };
  }
}
