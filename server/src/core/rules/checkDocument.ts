import { documentUnit, documentValue } from '../analysis/documentUnit';
import { FamilyView } from '../analysis/familyView';
import { kitViewOf } from '../analysis/kitView';
import { type InstructionView, ProcedureView, type StepView } from '../analysis/procedureView';
import { settingsFor } from '../analysis/settings';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { Unit } from '../model/facts';
import type { Concession, Instruction, Line, Part, Step } from '../model/generated/types';
import type { Declared, Entry } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { walkOf } from '../walk/walkProcedure';
import { matchConcessions } from './concessions';
import type { CheckOutcome, Rule } from './defineRule';
import type { Finding } from './finding';
import { type Listener, type Listeners, listenersOf, type VisitorName } from './listeners';
import { RULES } from './registry';
import { type FindingDraft, type ReleasedText, type Reporting, RuleContext, type Surroundings } from './ruleContext';
import { StepMemory } from './stepMemory';

export interface CheckOptions {
  /** The day for which dates are judged, as `2026-10-12`. */
  readonly today: string;
  readonly rules?: readonly Rule[];
  /** The last released text of a document, by its URI; a check that compares nothing leaves it out. */
  readonly released?: (uri: Uri) => ReleasedText | undefined;
}

/** A finding that a concession lets stand. It stays visible on the sheet and in a review. */
export interface ConcededFinding {
  readonly finding: Finding;
  readonly concession: Concession;
}

export interface CheckResult {
  readonly findings: readonly Finding[];
  readonly conceded: readonly ConcededFinding[];
}

/** Checks one document. The result depends on the document and on what it links to, never on who links to it. */
export function checkDocument(snapshot: Snapshot, document: SyntaxDocument, options: CheckOptions): CheckResult {
  return new DocumentCheck(snapshot, document, options).run();
}

const RULE_IDS: ReadonlySet<string> = new Set(RULES.map((rule) => rule.id));

class DocumentCheck {
  readonly #found: Finding[] = [];
  readonly #rules: readonly Rule[];
  readonly #around: Surroundings;
  readonly #context: RuleContext;
  readonly #reporting: Reporting;
  readonly #steps = new Map<Step, StepView>();
  readonly #instructions = new Map<Instruction, InstructionView>();
  readonly #memory: StepMemory | undefined;
  readonly #listeners: Listeners;
  /** What the step that is being looked at gave so far. */
  #drafts: FindingDraft[] = [];

  constructor(snapshot: Snapshot, document: SyntaxDocument, options: CheckOptions) {
    this.#rules = options.rules ?? RULES;
    const settings = settingsFor(snapshot, document.uri);
    const procedure = document.kind === 'procedure' ? ProcedureView.of(snapshot, document) : undefined;
    const kit = document.kind === 'kit' ? kitViewOf(snapshot, document) : undefined;
    const family = procedure?.family ?? kit?.family ?? FamilyView.of(document);
    const findingsIn: Surroundings['findingsIn'] = (other, changed) => checkDocument(other, changed, options).findings;
    const { today } = options;
    const released = options.released?.(document.uri);
    const parts = { procedure, family, kit, released };
    this.#around = { snapshot, document, settings, today, ruleIds: RULE_IDS, ...parts, findingsIn };
    this.#listeners = listenersOf(this.#rules);
    this.#reporting = { rule: NO_RULE, emit: (draft) => this.#emit(draft) };
    this.#context = new RuleContext(this.#around, this.#reporting, undefined, undefined);
    this.#memory = procedure === undefined ? undefined : new StepMemory(procedure, this.#around, this.#rules);
    for (const step of procedure?.steps ?? []) this.#steps.set(step.step, step);
  }

  run(): CheckResult {
    const { document, procedure } = this.#around;
    this.#call('document', document, this.#context);
    for (const problem of document.problems) this.#call('syntaxProblem', problem, this.#context);
    const unit = documentUnit(document);
    if (unit !== undefined) this.#unit(unit, this.#context);
    this.#views();
    const matches = matchConcessions(procedure?.value.concessions ?? [], this.#found, this.#around.today);
    const conceded = matches.flatMap(({ concession, conceded: finding }) =>
      finding === undefined ? [] : [{ concession, finding }],
    );
    const letStand = new Set(conceded.map((one) => one.finding));
    const outcome: CheckOutcome = {
      findings: this.#found,
      standing: this.#found.filter((finding) => !letStand.has(finding)),
      matches: matches.map((one) => one.all),
      rules: new Set(this.#rules.map((rule) => rule.id)),
    };
    const before = this.#found.length;
    this.#call('outcome', outcome, this.#context);
    const late = this.#found.slice(before);
    const findings = [...this.#found.slice(0, before).filter((finding) => !letStand.has(finding)), ...late];
    return { findings: findings.sort(byPlace), conceded };
  }

  #emit(draft: FindingDraft): void {
    this.#drafts.push(draft);
    this.#found.push(draft.placedIn(this.#around.document));
  }

  #views(): void {
    const { document, procedure, family, kit } = this.#around;
    if (procedure !== undefined) this.#call('procedure', procedure, this.#context);
    if (procedure !== undefined && this.#listeners.failure !== undefined) this.#walk(procedure);
    if (document.kind === 'family' && family !== undefined) this.#call('family', family, this.#context);
    if (kit !== undefined) this.#call('kit', kit, this.#context);
    const stores = documentValue(document, 'stores');
    if (stores !== undefined) this.#call('stores', stores, this.#context);
  }

  /** A failure is told at the step in which it shows, or in which what led to it was done. */
  #walk(procedure: ProcedureView): void {
    const failures = walkOf(procedure)?.failures ?? [];
    if (failures.length === 0) return;
    const byItem = new Map(procedure.steps.map((step) => [step.step.node.item, step]));
    for (const failure of failures) {
      const place = failure.at ?? failure.because?.at;
      const step = place === undefined ? undefined : byItem.get(place.item);
      this.#call('failure', failure, new RuleContext(this.#around, this.#reporting, step, undefined));
    }
  }

  /** Visits a unit and what is inside it; inside a step or an instruction the context names it. */
  #unit(unit: Unit, outer: RuleContext): void {
    if (unit.def === 'procedure/step') {
      this.#step(unit, outer);
      return;
    }
    const instruction = this.#instructions.get(unit.value as Instruction);
    if (instruction === undefined) {
      this.#inside(unit, outer);
      return;
    }
    const context = new RuleContext(this.#around, this.#reporting, outer.step, instruction);
    this.#call('instruction', instruction, context);
    this.#inside(unit, context);
  }

  /** A step that was looked at in the same surroundings is not looked at again. */
  #step(unit: Unit, outer: RuleContext): void {
    const view = this.#steps.get(unit.value as Step);
    const known = this.#memory?.recall(unit, view);
    for (const draft of known ?? []) this.#found.push(draft.placedIn(this.#around.document));
    if (known !== undefined) return;
    const look = (): readonly FindingDraft[] => {
      const drafts: FindingDraft[] = [];
      this.#drafts = drafts;
      this.#visitStep(unit, view, outer);
      // What is found later on is not the step's.
      this.#drafts = [];
      return drafts;
    };
    if (this.#memory === undefined) look();
    else this.#memory.look(unit, view, look);
  }

  #visitStep(unit: Unit, view: StepView | undefined, outer: RuleContext): void {
    if (view === undefined) {
      this.#inside(unit, outer);
      return;
    }
    for (const one of view.instructions) this.#instructions.set(one.instruction, one);
    const context = new RuleContext(this.#around, this.#reporting, view, undefined);
    this.#call('step', view, context);
    this.#inside(unit, context);
  }

  #inside(unit: Unit, context: RuleContext): void {
    if (unit.def === 'kit/line') this.#call('kitLine', unit.value as Line, context);
    this.#call('unit', unit, context);
    for (const problem of unit.problems) this.#call('shapeProblem', problem, context);
    this.#facts(unit, context);
    for (const child of unit.children) this.#unit(child, context);
  }

  #facts(unit: Unit, context: RuleContext): void {
    const { facts } = unit;
    if (facts.declared.length > 0) for (const one of facts.declared) this.#declared(one, context);
    this.#each('ref', facts.refs, context);
    this.#each('prose', facts.prose, context);
    this.#each('quantity', facts.quantities, context);
    this.#each('condition', facts.conditions, context);
    this.#each('byBuild', facts.byBuilds, context);
    this.#each('path', facts.paths, context);
  }

  /** Most units hold facts of one or two kinds, and where a compiler is still cold a loop over nothing costs too. */
  #each(name: VisitorName, facts: readonly unknown[], context: RuleContext): void {
    for (let i = 0; i < facts.length; i++) this.#call(name, facts[i], context);
  }

  #declared(declared: Declared, context: RuleContext): void {
    this.#call('declared', declared, context);
    if (declared.kind !== 'part' || context.document.kind !== 'family') return;
    const part: Entry<Part> | undefined = context.family?.parts.get(declared.id);
    if (part !== undefined && part.id === declared) this.#call('part', part, context);
  }

  #call(name: VisitorName, value: unknown, context: RuleContext): void {
    const listeners = this.#listeners[name];
    if (listeners === undefined) return;
    for (let i = 0; i < listeners.length; i++) {
      const { rule, visit } = listeners[i] as Listener;
      this.#reporting.rule = rule;
      visit.call(rule.check, value, context);
    }
  }
}

/** Stands where no visitor runs, so that nothing can be reported. */
const NO_RULE = undefined as unknown as Rule;

function byPlace(a: Finding, b: Finding): number {
  return a.span.start - b.span.start || a.span.end - b.span.end || a.rule.localeCompare(b.rule);
}
