import type { Phase, Step } from '../../model/generated/types';
import type { Prose } from '../../model/values';
import type {
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
import type { Plan, PlannedPhase, PlannedStep } from './plannedSteps';
import { type StepContent, stepOnSheet } from './stepMemory';

export function phasesOf(
  plan: Plan,
  memory: Memory,
  loose: ReadonlyMap<Phase, LooseEnd[]>,
  context: BuildContext,
): SheetPhase[] {
  const findings = findingsByStep(context);
  return plan.phases.flatMap((planned) => phaseOf(planned, findings, memory, loose, context));
}

function phaseOf(
  { phase, steps }: PlannedPhase,
  findings: ReadonlyMap<string, SheetFinding[]>,
  memory: Memory,
  loose: ReadonlyMap<Phase, LooseEnd[]>,
  context: BuildContext,
): SheetPhase[] {
  const [first] = steps;
  if (first === undefined) return [];
  const condition = context.conditions.condition(first.here.inPhase, context.picked.set);
  const { changed } = context.options;
  const sheetSteps = steps.map((one): SheetStep => {
    const { id, number, here } = one;
    const at = {
      id,
      number,
      isChanged: changed?.steps.has(here.view.id) === true,
      // What the phase warns of stands at its first step, before the act.
      fromPhase: one === first ? cautionsOf(phase, context) : [],
      findings: findings.get(id) ?? [],
    };
    return stepOnSheet(here.view, at, memory, context, () => contentOf(one, memory, context));
  });
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
}

/** What is said of a step. It must look at nothing that `StepMemory` does not know of. */
function contentOf({ here, id }: PlannedStep, memory: Memory, context: BuildContext): StepContent {
  const { where, inPhase, view } = here;
  const { step } = view;
  const figures = figuresOf([...(step.figure ?? []), ...furtherFigures(step)], context);
  const all = (step.do ?? []).flatMap((each) => instructionsFor(each, where, memory, context));
  const instructions = figures.length === 0 ? all : all.map(withoutPicture);
  const condition = context.conditions.condition(where, inPhase);
  const sign = step.sign?.value;
  return {
    title: context.names.written(step.title) ?? id,
    ...titleLang(step.title, context),
    ...(condition === undefined ? {} : { condition }),
    optional: step.optional?.value === true,
    people: Math.max(1, step.people?.value ?? 1),
    ...(sign === undefined ? {} : { sign: context.writing.phrases.signer(sign) }),
    cautions: cautionsOf(step, context),
    figures,
    instructions,
    notes: [],
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

function findingsByStep({ options }: BuildContext): Map<string, SheetFinding[]> {
  const byStep = new Map<string, SheetFinding[]>();
  for (const finding of options.findings) {
    if (finding.step === undefined) continue;
    const known = byStep.get(finding.step);
    if (known === undefined) byStep.set(finding.step, [shownFinding(finding)]);
    else known.push(shownFinding(finding));
  }
  return byStep;
}

/** Every instruction of a step, those for the case that something is wrong behind their own. */
export function instructionsIn({ instructions }: Pick<SheetStep, 'instructions'>): SheetInstruction[] {
  return instructions.flatMap((one) => [one, ...(one.ifNot === undefined ? [] : instructionsIn(one.ifNot))]);
}
