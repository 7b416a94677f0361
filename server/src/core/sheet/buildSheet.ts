import type { ProcedureView } from '../analysis/procedureView';
import { type Build, buildsOf } from '../builds';
import { receivedUnit } from './build/asReceived';
import { beforeYouStart } from './build/beforeYouStart';
import type { BuildContext, PickedSet, SheetOptions } from './build/buildContext';
import { changesOf } from './build/changedSteps';
import { ConditionWords } from './build/conditionWords';
import { fatesOf } from './build/fates';
import { concessionsOf, errorCount, findingsElsewhere } from './build/findings';
import { forkWays } from './build/forkWays';
import { type Ground, groundOf } from './build/ground';
import { figuresNotNeeded, portCapsOf } from './build/handedOver';
import { headerOf, revisionLines } from './build/header';
import type { Memory } from './build/instructions';
import { kitLists } from './build/kits';
import { consumableLines, hazardsOf, toolLines, wearOf } from './build/laidOut';
import { looseEndsOf } from './build/looseEnds';
import { Names } from './build/names';
import { type Plan, planSteps } from './build/plannedSteps';
import { proofOf } from './build/proof';
import { ProseReader } from './build/proseReader';
import { QuantityWords } from './build/quantityWords';
import { recordOf } from './build/recordSheet';
import { discardedRefs, renewalBoxes, spunOff } from './build/renewals';
import { roundsOf } from './build/rounds';
import { sentSlips } from './build/sentOut';
import { StepNames } from './build/stepNames';
import { phasesOf } from './build/steps';
import { recordTable, torqueTable } from './build/tables';
import { temporaryLines } from './build/temporaries';
import { Untranslated } from './build/untranslated';
import { Uses } from './build/uses';
import { walkedWork } from './build/walkedWork';
import { writingFor } from './sentences';
import { closed, plain } from './sentences/grammar';
import type { Sheet, SheetSource } from './sheet';

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
  const plan = planSteps(procedure, picked.set);
  const context = contextFor(procedure, picked, options, plan);
  const work = walkedWork(procedure, picked.set);
  const loose = looseEndsOf(work, context);
  const phases = phasesOf(plan, memoryFor(plan, context), loose, context);
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
    source: sourceOf(procedure, plan),
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
  const untranslated = context.untranslated.list(plan.steps, (prose) => plain(context.prose.read(prose)));
  return keptSheet(untranslated.length === 0 ? sheet : { ...sheet, untranslated }, context.ground);
}

/** The sheet with as many objects of the last one as say the same. Its phases have them already, step by step. */
function keptSheet({ phases, source, ...around }: Sheet, ground: Ground): Sheet {
  return { ...ground.kept(around), phases, ...(source === undefined ? {} : { source }) };
}

function contextFor(procedure: ProcedureView, picked: PickedSet, options: SheetOptions, { steps }: Plan): BuildContext {
  const writing = writingFor(options.language);
  const untranslated = new Untranslated(options.settings.writtenIn);
  const names = new Names(procedure, options.language, untranslated);
  const stepNames = new StepNames(procedure, steps);
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
    prose: new ProseReader(procedure, names, writing, stepNames, picked.set),
    uses: new Uses(steps),
    stepNames,
    ground: groundOf(procedure, picked, options),
  };
}

function memoryFor(plan: Plan, { procedure, uses }: BuildContext): Memory {
  const { family, space } = procedure;
  return {
    discarded: discardedRefs(uses.fitting, family),
    spunOff: spunOff(uses.fitting, space),
    renewals: renewalBoxes(plan, uses.fitting, family),
    rounds: roundsOf(plan.steps, uses.goingBack),
  };
}

function sourceOf({ document }: ProcedureView, { steps }: Plan): SheetSource {
  return { uri: document.uri, offsets: steps.map(({ here }) => document.spanOf(here.view.step.node).start) };
}
