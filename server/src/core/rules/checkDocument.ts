import { documentUnit, documentValue } from '../analysis/documentUnit';
import { FamilyView } from '../analysis/familyView';
import { kitViewOf } from '../analysis/kitView';
import { type InstructionView, ProcedureView, type StepView } from '../analysis/procedureView';
import { settingsFor } from '../analysis/settings';
import type { Snapshot } from '../analysis/snapshot';
import type { Unit } from '../model/facts';
import type { Concession, Instruction, Line, Part, Step } from '../model/generated/types';
import type { Declared, Entry } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { matchConcessions } from './concessions';
import type { CheckOutcome, Rule, Visitors } from './defineRule';
import type { Finding } from './finding';
import { RULES } from './registry';
import { type Reporting, RuleContext, type Surroundings } from './ruleContext';

export interface CheckOptions {
  /** The day for which dates are judged, as `2026-10-12`. */
  readonly today: string;
  readonly rules?: readonly Rule[];
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

type VisitorName = keyof Visitors<never>;

class DocumentCheck {
  readonly #found: Finding[] = [];
  readonly #rules: readonly Rule[];
  readonly #around: Surroundings;
  readonly #context: RuleContext;
  readonly #listeners: Listeners;
  readonly #reporting: Reporting;
  readonly #steps = new Map<Step, StepView>();
  readonly #instructions = new Map<Instruction, InstructionView>();

  constructor(snapshot: Snapshot, document: SyntaxDocument, options: CheckOptions) {
    this.#rules = options.rules ?? RULES;
    const settings = settingsFor(snapshot, document.uri);
    const procedure = document.kind === 'procedure' ? ProcedureView.of(snapshot, document) : undefined;
    const kit = document.kind === 'kit' ? kitViewOf(snapshot, document) : undefined;
    const family = procedure?.family ?? kit?.family ?? FamilyView.of(document);
    this.#around = {
      snapshot,
      document,
      settings,
      today: options.today,
      ruleIds: RULE_IDS,
      procedure,
      family,
      kit,
      step: undefined,
      instruction: undefined,
    };
    this.#listeners = listenersOf(this.#rules);
    this.#reporting = { rule: NO_RULE, emit: (finding) => void this.#found.push(finding) };
    this.#context = new RuleContext(this.#around, this.#reporting);
    for (const step of procedure?.steps ?? []) {
      this.#steps.set(step.step, step);
      for (const one of step.instructions) this.#instructions.set(one.instruction, one);
    }
  }

  run(): CheckResult {
    const { document, procedure } = this.#around;
    this.#call('document', document, this.#context);
    for (const problem of document.problems) this.#call('syntaxProblem', problem, this.#context);
    const unit = documentUnit(document);
    if (unit !== undefined) this.#unit(unit, this.#context);
    this.#views();
    const matches = matchConcessions(procedure?.value.concessions ?? [], this.#found, this.#around.today);
    const outcome: CheckOutcome = {
      findings: this.#found,
      matches: matches.map((one) => one.all),
      rules: new Set(this.#rules.map((rule) => rule.id)),
    };
    const before = this.#found.length;
    this.#call('outcome', outcome, this.#context);
    const conceded = matches.flatMap(({ concession, conceded: finding }) =>
      finding === undefined ? [] : [{ concession, finding }],
    );
    const letStand = new Set(conceded.map((one) => one.finding));
    const late = this.#found.slice(before);
    const findings = [...this.#found.slice(0, before).filter((finding) => !letStand.has(finding)), ...late];
    return { findings: findings.sort(byPlace), conceded };
  }

  #views(): void {
    const { document, procedure, family, kit } = this.#around;
    if (procedure !== undefined) this.#call('procedure', procedure, this.#context);
    if (document.kind === 'family' && family !== undefined) this.#call('family', family, this.#context);
    if (kit !== undefined) this.#call('kit', kit, this.#context);
    const stores = documentValue(document, 'stores');
    if (stores !== undefined) this.#call('stores', stores, this.#context);
  }

  /** Visits a unit and what is inside it; inside a step or an instruction the surroundings name it. */
  #unit(unit: Unit, outer: RuleContext): void {
    const context = this.#inside(unit, outer);
    const { step, instruction } = context;
    if (step !== outer.step && step !== undefined) this.#call('step', step, context);
    if (instruction !== outer.instruction && instruction !== undefined) this.#call('instruction', instruction, context);
    if (unit.def === 'kit/line') this.#call('kitLine', unit.value as Line, context);
    this.#call('unit', unit, context);
    for (const problem of unit.problems) this.#call('shapeProblem', problem, context);
    this.#facts(unit, context);
    for (const child of unit.children) this.#unit(child, context);
  }

  #inside(unit: Unit, outer: RuleContext): RuleContext {
    if (unit.def === 'procedure/step') return this.#within(outer, { step: this.#steps.get(unit.value as Step) });
    const instruction = this.#instructions.get(unit.value as Instruction);
    return instruction === undefined ? outer : this.#within(outer, { instruction });
  }

  #within(outer: RuleContext, inner: Partial<Surroundings>): RuleContext {
    return new RuleContext({ ...outer.around, ...inner }, this.#reporting);
  }

  #facts(unit: Unit, context: RuleContext): void {
    const { facts } = unit;
    for (const one of facts.declared) this.#declared(one, context);
    for (const one of facts.refs) this.#call('ref', one, context);
    for (const one of facts.prose) this.#call('prose', one, context);
    for (const one of facts.quantities) this.#call('quantity', one, context);
    for (const one of facts.conditions) this.#call('condition', one, context);
    for (const one of facts.byBuilds) this.#call('byBuild', one, context);
    for (const one of facts.paths) this.#call('path', one, context);
  }

  #declared(declared: Declared, context: RuleContext): void {
    this.#call('declared', declared, context);
    if (declared.kind !== 'part' || context.document.kind !== 'family') return;
    const part: Entry<Part> | undefined = context.family?.parts.get(declared.id);
    if (part !== undefined && part.id === declared) this.#call('part', part, context);
  }

  #call(name: VisitorName, value: unknown, context: RuleContext): void {
    for (const { rule, visit } of this.#listeners[name] ?? NOBODY) {
      this.#reporting.rule = rule;
      visit.call(rule.check, value, context);
    }
  }
}

interface Listener {
  readonly rule: Rule;
  readonly visit: (value: unknown, context: RuleContext) => void;
}

/** Who wants to see what; worked out once for a list of rules. */
type Listeners = Readonly<Partial<Record<VisitorName, readonly Listener[]>>>;

const NOBODY: readonly Listener[] = [];
/** Stands where no visitor runs, so that nothing can be reported. */
const NO_RULE = undefined as unknown as Rule;
const known = new WeakMap<readonly Rule[], Listeners>();

function listenersOf(rules: readonly Rule[]): Listeners {
  const already = known.get(rules);
  if (already !== undefined) return already;
  const listeners: Partial<Record<VisitorName, Listener[]>> = {};
  for (const rule of rules) {
    for (const [name, visit] of Object.entries(rule.check) as [VisitorName, Listener['visit']][]) {
      listeners[name] = [...(listeners[name] ?? []), { rule, visit }];
    }
  }
  known.set(rules, listeners);
  return listeners;
}

function byPlace(a: Finding, b: Finding): number {
  return a.span.start - b.span.start || a.span.end - b.span.end || a.rule.localeCompare(b.rule);
}
