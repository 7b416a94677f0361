import type { ProcedureView } from '../analysis/procedureView';
import { type Build, type BuildSet, buildsOf } from '../builds';
import { receivedUnit } from './build/asReceived';
import { beforeYouStart } from './build/beforeYouStart';
import type { BuildContext, PickedSet, SheetOptions } from './build/buildContext';
import { changesOf } from './build/changedSteps';
import { ConditionWords } from './build/conditionWords';
import { fatesOf } from './build/fates';
import { concessionsOf, errorCount, findingsElsewhere } from './build/findings';
import { forkWays } from './build/forkWays';
import { figuresNotNeeded, portCapsOf } from './build/handedOver';
import { headerOf, revisionLines } from './build/header';
import type { Memory } from './build/instructions';
import { kitLists } from './build/kits';
import { consumableLines, hazardsOf, toolLines, wearOf } from './build/laidOut';
import { looseEndsOf } from './build/looseEnds';
import { Names } from './build/names';
import { proofOf } from './build/proof';
import { ProseReader } from './build/proseReader';
import { QuantityWords } from './build/quantityWords';
import { recordOf } from './build/recordSheet';
import { discardedRefs, renewalBoxes, spunOff } from './build/renewals';
import { roundsOf } from './build/rounds';
import { sentSlips } from './build/sentOut';
import { type PlannedStep, phasesOf, planSteps } from './build/steps';
import { recordTable, torqueTable } from './build/tables';
import { temporaryLines } from './build/temporaries';
import { Untranslated } from './build/untranslated';
import { walkedWork } from './build/walkedWork';
import { writingFor } from './sentences';
import { closed, plain } from './sentences/grammar';
import type { Sheet } from './sheet';

export type { ConcessionInForce, FindingAtStep, PickedSet, SheetOptions } from './build/buildContext';

const MOST_BUILDS = 200;

/** A build that a sheet can be asked for. */
export interface SheetBuild {
  /** As `pickBuild` reads it. */
  readonly id: string;
  readonly label: string;
}

/** The builds to choose from, at most 200, plainest first. The first is the one to show when nobody has chosen. */
export function listSheetBuilds({ space }: ProcedureView): SheetBuild[] {
  return buildsOf(space.everything, space, MOST_BUILDS).map(({ id, label }: Build) => ({ id, label }));
}

/**
 * The sheet of one build: only what holds for it, numbered through, with every sentence written and every table filled.
 * What the bench decides is printed for each outcome with a box to tick. The result depends on its arguments alone, and
 * a procedure that is only half written gives a sheet of what there is. Never throws.
 */
export function buildSheet(procedure: ProcedureView, picked: PickedSet, options: SheetOptions): Sheet {
  const planned = planSteps(procedure, picked.set);
  const context = contextFor(procedure, picked, options, planned);
  const work = walkedWork(procedure, picked.set);
  const loose = looseEndsOf(work, context);
  const phases = phasesOf(planned, memoryFor(procedure, picked.set, planned), loose, context);
  const temporaries = temporaryLines(work, context);
  const fates = fatesOf(work, context);
  const kits = kitLists(context);
  const consumables = consumableLines(context);
  const tools = toolLines(context);
  const before = beforeYouStart(context);
  const received = receivedUnit(context);
  const errors = errorCount(context);
  const sheet: Sheet = {
    format: 1,
    language: options.language,
    paper: options.paper,
    sides: options.sides ?? options.settings.sides,
    header: headerOf(context),
    proof: proofOf(procedure.snapshot, procedure.document.uri),
    ...(errors === 0 ? {} : { notReleased: { errors } }),
    ...changesOf(phases, options.changed),
    safety: { wear: wearOf(consumables, context) },
    ...(received === undefined ? {} : { asReceived: received }),
    beforeYouStart: before,
    hazards: hazardsOf(consumables),
    tools,
    consumables,
    kits,
    phases,
    temporaries,
    fates,
    torqueTable: torqueTable(phases),
    recordTable: recordTable(phases, context),
    findings: findingsElsewhere(context),
    concessions: concessionsOf(context),
    record: recordOf({ work, loose, phases, tools, consumables }, context),
    slips: sentSlips(context),
    atInstallation: (procedure.value.atInstallation ?? []).map((one) => closed(context.prose.read(one))),
    portCaps: portCapsOf(context),
    figuresNotNeeded: figuresNotNeeded(before, phases, context),
    revisions: revisionLines(context),
  };
  // Whatever is printed has been read by now.
  const untranslated = context.untranslated.list(planned, (prose) => plain(context.prose.read(prose)));
  return untranslated.length === 0 ? sheet : { ...sheet, untranslated };
}

function contextFor(
  procedure: ProcedureView,
  picked: PickedSet,
  options: SheetOptions,
  planned: readonly PlannedStep[],
): BuildContext {
  const writing = writingFor(options.language);
  const untranslated = new Untranslated(options.settings.writtenIn);
  const names = new Names(procedure, options.language, untranslated);
  const stepNumbers = new Map(planned.map((one) => [one.id, one.number]));
  return {
    procedure,
    document: procedure.document,
    picked,
    options,
    writing,
    names,
    untranslated,
    quantities: new QuantityWords(options.settings, writing.phrases, options.language),
    conditions: new ConditionWords(procedure, writing.phrases, names, forkWays(procedure, names)),
    prose: new ProseReader(procedure, names, writing, stepNumbers, picked.set),
    uses: usesHere(procedure, picked.set, planned),
    stepNumbers,
  };
}

function usesHere(procedure: ProcedureView, set: BuildSet, planned: readonly PlannedStep[]): BuildContext['uses'] {
  const plans = new Map(planned.map((one) => [one.step, one]));
  return procedure.steps.flatMap(({ step, instructions }) => {
    const plan = plans.get(step);
    if (plan === undefined) return [];
    const here = instructions.filter((one) => one.where.overlaps(set));
    return here.map(({ instruction, where }) => ({
      instruction,
      step: plan.number,
      stepId: plan.id,
      where: where.and(set),
    }));
  });
}

function memoryFor(procedure: ProcedureView, set: BuildSet, planned: readonly PlannedStep[]): Memory {
  return {
    discarded: discardedRefs(procedure, set),
    spunOff: spunOff(procedure, set),
    renewals: renewalBoxes(procedure, set),
    rounds: roundsOf(planned.map(({ id, step }) => ({ id, instructions: step.do ?? [] }))),
  };
}
