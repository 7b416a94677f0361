import { declarationsIn } from '../analysis/declarations';
import { targetsIn } from '../analysis/links';
import { NameQuestions } from '../analysis/nameQuestions';
import { Names } from '../analysis/names';
import type { ProcedureView, StepView } from '../analysis/procedureView';
import { areSame, SameParts } from '../analysis/sameParts';
import { gatherer } from '../analysis/stepRuns';
import type { BuildSet } from '../builds';
import { type Unit, unitsIn } from '../model/facts';
import type { Item, Node } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Rule } from './defineRule';
import type { FindingDraft, Surroundings } from './ruleContext';
import { isDoubled, isRootTorn } from './support/tornText';

/**
 * Everything beside a step's own text that findings at it may depend on, but for the ids that other steps declare. Two
 * checks with the same surroundings have the same object.
 */
export interface StepEnvironment {
  own: OwnIds;
}

/** The ids that the procedure declares and the texts that cannot be read: while they are the same object, so are all answers. */
interface OwnIds {
  readonly written: string;
  readonly torn: readonly Item[];
}

interface Remembered {
  readonly environment: StepEnvironment;
  readonly where: BuildSet | undefined;
  readonly drafts: readonly FindingDraft[];
  /** What was asked of the ids of the procedure; undefined where nothing was. */
  readonly questions: NameQuestions | undefined;
  /** What was known while it was asked. */
  own: OwnIds;
  /** Which of its texts stood where they could not be read as they were meant; the same text may stand well elsewhere. */
  readonly torn: readonly Item[];
}

const NO_IDS: OwnIds = { written: '', torn: [] };

const environments = new SameParts<StepEnvironment>();

/** What was found at the steps of one procedure, for the checks that follow. */
export class StepMemory {
  readonly #environment: StepEnvironment;
  readonly #names: Names;
  readonly #own: OwnIds;

  constructor(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]) {
    this.#environment = environmentOf(procedure, around, rules);
    this.#names = Names.of(procedure.snapshot, procedure.document);
    this.#own = ownIdsOf(procedure.document, this.#environment);
  }

  /** What was found at a step when everything that it depends on was the same; undefined where it must be looked at anew. */
  recall(unit: Unit, view: StepView | undefined): readonly FindingDraft[] | undefined {
    const known = unit.remembered as Remembered | undefined;
    const same = known?.environment === this.#environment && known.where === view?.where;
    return same && this.#holds(known, unit) ? known.drafts : undefined;
  }

  /** Looks at a step, and keeps what is found. */
  look(unit: Unit, view: StepView | undefined, look: () => readonly FindingDraft[]): void {
    const questions = new NameQuestions();
    this.#names.writeDown(questions);
    const drafts = look();
    this.#names.writeDown(undefined);
    unit.remembered = {
      environment: this.#environment,
      where: view?.where,
      drafts,
      questions: questions.isEmpty ? undefined : questions,
      own: this.#own,
      torn: tornIn(unit, this.#own),
    } satisfies Remembered;
  }

  #holds(known: Remembered, unit: Unit): boolean {
    const { questions, own } = known;
    if (own === this.#own) return true;
    if (!areSame(known.torn, tornIn(unit, this.#own))) return false;
    if (questions === undefined) return true;
    if (questions.all && own.written !== this.#own.written) return false;
    if (questions.torn && !areSame(own.torn, this.#own.torn)) return false;
    if (!questions.holds((kind, id) => this.#names.answer(kind, id))) return false;
    known.own = this.#own;
    return true;
  }
}

const NOTHING_TORN: readonly Item[] = [];

function tornIn(unit: Unit, { torn }: OwnIds): readonly Item[] {
  if (torn.length === 0) return NOTHING_TORN;
  const within = torn.filter((item) => unitsIn(unit).some((one) => one.node.item === item));
  return within.length === 0 ? NOTHING_TORN : within;
}

function ownIdsOf(document: SyntaxDocument, environment: StepEnvironment): OwnIds {
  const { written } = declarationsIn(document);
  const torn = document.problems.map((problem) => problem.range.item);
  const { own } = environment;
  if (own.written !== written || !areSame(own.torn, torn)) environment.own = { written, torn };
  return environment.own;
}

/** The surroundings of a procedure's steps: its head, what it links to, settings, day and rules. */
function environmentOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): StepEnvironment {
  return environments.of(partsOf(procedure, around, rules), () => ({ own: NO_IDS }));
}

function partsOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): unknown[] {
  const { document, kits, snapshot } = procedure;
  const links = targetsIn(document).map((path) => {
    const target = procedure.follow(path);
    return target.is === 'document' ? target.document : target.is === 'file' ? target.text : target.is;
  });
  const families = kits.map((kit) => kit.family?.document);
  // A mention means a tool only where no step has the same id.
  const shared = sharedIds(procedure).flat();
  return [
    rules,
    around.settings,
    around.today,
    snapshot.roots,
    isRootTorn(document),
    isDoubled(document),
    ...shared,
    ...links,
    ...families,
    'head',
    ...headOf(document),
  ];
}

/** The items of everything but the steps. What cannot be read is not among them: it has nothing to say. */
function headOf({ root }: SyntaxDocument): Set<Item> {
  const items = new Set<Item>();
  for (const { key, value } of root?.pairs ?? []) {
    items.add(key.item);
    if (key.text === 'phases' && value?.kind === 'list') for (const phase of value.items) addPhase(items, phase);
    else if (value !== undefined) addAll(items, value);
  }
  return items;
}

function addPhase(items: Set<Item>, phase: Node): void {
  if (phase.kind !== 'map') addAll(items, phase);
  for (const { key, value } of phase.kind === 'map' ? phase.pairs : []) {
    items.add(key.item);
    if (key.text !== 'steps' && value !== undefined) addAll(items, value);
  }
}

/** A list or map that is cut holds entries of other items. */
function addAll(items: Set<Item>, node: Node): void {
  items.add(node.item);
  if (node.kind === 'list') for (const one of node.items) items.add(one.item);
  if (node.kind === 'map') for (const { key } of node.pairs) items.add(key.item);
}

const sharedIds = gatherer(
  (steps, procedure) => steps.flatMap(({ id }) => (isShared(procedure, id) ? [id] : [])),
  (procedure) => procedure.tools,
);

function isShared({ tools, consumables, family }: ProcedureView, id: string): boolean {
  return tools.has(id) || consumables.has(id) || family?.part(id) !== undefined;
}
