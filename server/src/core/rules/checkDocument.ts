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
import { RuleContext, type Surroundings } from './ruleContext';

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
  readonly #listeners = new Map<VisitorName, readonly Rule[]>();
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
    for (const step of procedure?.steps ?? []) {
      this.#steps.set(step.step, step);
      for (const one of step.instructions) this.#instructions.set(one.instruction, one);
    }
  }

  run(): CheckResult {
    const { document, procedure } = this.#around;
    this.#call('document', document, this.#around);
    for (const problem of document.problems) this.#call('syntaxProblem', problem, this.#around);
    const unit = documentUnit(document);
    if (unit !== undefined) this.#unit(unit, this.#around);
    this.#views();
    const matches = matchConcessions(procedure?.value.concessions ?? [], this.#found, this.#around.today);
    const outcome: CheckOutcome = {
      findings: this.#found,
      matches: matches.map((one) => one.all),
      rules: new Set(this.#rules.map((rule) => rule.id)),
    };
    const before = this.#found.length;
    this.#call('outcome', outcome, this.#around);
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
    if (procedure !== undefined) this.#call('procedure', procedure, this.#around);
    if (document.kind === 'family' && family !== undefined) this.#call('family', family, this.#around);
    if (kit !== undefined) this.#call('kit', kit, this.#around);
    const stores = documentValue(document, 'stores');
    if (stores !== undefined) this.#call('stores', stores, this.#around);
  }

  /** Visits a unit and what is inside it; inside a step or an instruction the surroundings name it. */
  #unit(unit: Unit, outer: Surroundings): void {
    const around = this.#inside(unit, outer);
    if (around.step !== outer.step && around.step !== undefined) this.#call('step', around.step, around);
    if (around.instruction !== outer.instruction && around.instruction !== undefined) {
      this.#call('instruction', around.instruction, around);
    }
    if (unit.def === 'kit/line') this.#call('kitLine', unit.value as Line, around);
    this.#call('unit', unit, around);
    for (const problem of unit.problems) this.#call('shapeProblem', problem, around);
    this.#facts(unit, around);
    for (const child of unit.children) this.#unit(child, around);
  }

  #inside(unit: Unit, outer: Surroundings): Surroundings {
    if (unit.def === 'procedure/step') return { ...outer, step: this.#steps.get(unit.value as Step) };
    const instruction = this.#instructions.get(unit.value as Instruction);
    return instruction === undefined ? outer : { ...outer, instruction };
  }

  #facts(unit: Unit, around: Surroundings): void {
    const { facts } = unit;
    for (const one of facts.declared) this.#declared(one, around);
    for (const one of facts.refs) this.#call('ref', one, around);
    for (const one of facts.prose) this.#call('prose', one, around);
    for (const one of facts.quantities) this.#call('quantity', one, around);
    for (const one of facts.conditions) this.#call('condition', one, around);
    for (const one of facts.byBuilds) this.#call('byBuild', one, around);
    for (const one of facts.paths) this.#call('path', one, around);
  }

  #declared(declared: Declared, around: Surroundings): void {
    this.#call('declared', declared, around);
    if (declared.kind !== 'part' || around.document.kind !== 'family') return;
    const part: Entry<Part> | undefined = around.family?.parts.get(declared.id);
    if (part !== undefined && part.id === declared) this.#call('part', part, around);
  }

  #call<Name extends VisitorName>(name: Name, value: unknown, around: Surroundings): void {
    for (const rule of this.#listening(name)) {
      const visit = rule.check[name] as ((value: unknown, ctx: RuleContext) => void) | undefined;
      visit?.call(rule.check, value, new RuleContext(rule, around, (finding) => this.#found.push(finding)));
    }
  }

  #listening(name: VisitorName): readonly Rule[] {
    const known = this.#listeners.get(name) ?? this.#rules.filter((rule) => rule.check[name] !== undefined);
    this.#listeners.set(name, known);
    return known;
  }
}

function byPlace(a: Finding, b: Finding): number {
  return a.span.start - b.span.start || a.span.end - b.span.end || a.rule.localeCompare(b.rule);
}
