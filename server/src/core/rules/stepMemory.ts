import { declarationsIn } from '../analysis/declarations';
import { pathsOf } from '../analysis/links';
import { NameQuestions } from '../analysis/nameQuestions';
import { Names } from '../analysis/names';
import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Unit } from '../model/facts';
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
  readonly parts: readonly unknown[];
}

interface Remembered {
  readonly environment: StepEnvironment;
  readonly where: BuildSet | undefined;
  readonly drafts: readonly FindingDraft[];
  /** What was asked of the ids of the procedure; undefined where nothing was. */
  readonly questions: NameQuestions | undefined;
  /** What was known while it was asked, for the questions that concern all ids or what cannot be read. */
  readonly ids: string;
  readonly torn: readonly Item[];
}

/** Few procedures are worked on at a time; each is found again after a keystroke as long as it is among the last. */
const MOST = 16;
const recent: StepEnvironment[] = [];

/** What was found at the steps of one procedure, for the checks that follow. */
export class StepMemory {
  readonly #environment: StepEnvironment;
  readonly #names: Names;
  readonly #document: SyntaxDocument;
  #ids: string | undefined;
  #torn: readonly Item[] | undefined;

  constructor(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]) {
    this.#environment = environmentOf(procedure, around, rules);
    this.#names = Names.of(procedure.snapshot, procedure.document);
    this.#document = procedure.document;
  }

  /** What was found at a step when everything that it depends on was the same; undefined where it must be looked at anew. */
  recall(unit: Unit, view: StepView | undefined): readonly FindingDraft[] | undefined {
    const known = unit.remembered as Remembered | undefined;
    const same = known?.environment === this.#environment && known.where === view?.where;
    return same && this.#holds(known) ? known.drafts : undefined;
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
      ids: questions.all ? this.#allIds() : '',
      torn: questions.torn ? this.#tornItems() : [],
    } satisfies Remembered;
  }

  #holds({ questions, ids, torn }: Remembered): boolean {
    if (questions === undefined) return true;
    if (questions.all && ids !== this.#allIds()) return false;
    if (questions.torn && !areSame(torn, this.#tornItems())) return false;
    return questions.holds((kind, id) => this.#names.answer(kind, id));
  }

  #allIds(): string {
    this.#ids ??= [...declarationsIn(this.#document)]
      .map(([kind, things]) => [kind, ...things.keys()].join(' '))
      .join();
    return this.#ids;
  }

  #tornItems(): readonly Item[] {
    this.#torn ??= this.#document.problems.map((problem) => problem.range.item);
    return this.#torn;
  }
}

/** The surroundings of a procedure's steps: its head, what it links to, settings, day and rules. */
function environmentOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): StepEnvironment {
  const parts = partsOf(procedure, around, rules);
  const at = recent.findIndex((one) => areSame(one.parts, parts));
  const environment = recent[at] ?? { parts };
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(environment);
  recent.length = Math.min(recent.length, MOST);
  return environment;
}

function areSame(some: readonly unknown[], others: readonly unknown[]): boolean {
  return some.length === others.length && some.every((part, i) => part === others[i]);
}

function partsOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): unknown[] {
  const { document, steps, kits, snapshot } = procedure;
  const links = pathsOf(document).map((path) => {
    const target = procedure.follow(path);
    return target.is === 'document' ? target.document : target.is === 'file' ? target.text : target.is;
  });
  const families = kits.map((kit) => kit.family?.document);
  // A mention means a tool only where no step has the same id.
  const shared = steps.flatMap(({ id }) => (isShared(procedure, id) ? [id] : []));
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

function isShared({ tools, consumables, family }: ProcedureView, id: string): boolean {
  return tools.has(id) || consumables.has(id) || family?.part(id) !== undefined;
}
