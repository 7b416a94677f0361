import type { FamilyView } from '../analysis/familyView';
import type { KitView } from '../analysis/kitView';
import type { InstructionView, ProcedureView, StepView } from '../analysis/procedureView';
import type { Severity } from '../analysis/settings';
import type { ByBuildFact, ConditionFact, ProseFact, QuantityFact, RefFact, Unit } from '../model/facts';
import type { Line, Part, StoresDocument } from '../model/generated/types';
import type { ShapeProblem } from '../model/shapeProblem';
import type { Declared, Entry, PathRef } from '../model/values';
import type { SyntaxProblem } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Failure } from '../walk/failure';
import type { Example } from './examples';
import type { Finding, FixSafety } from './finding';
import type { RuleContext } from './ruleContext';

/** The groups that rules stand in; each has a folder. */
export type RuleGroup = 'form' | 'quantities' | 'threads' | 'tools' | 'kit' | 'family' | 'walk' | 'limits' | 'control';

/** Messages by key. A message starts with a capital, says what is wrong and what to do, and has no full stop at its end. */
export type Messages = Readonly<Record<string, (...args: never[]) => string>>;

/**
 * What a rule can look at. Each is called for everything of its kind in a document, in the order of the text.
 *
 * What is found at a step is remembered: a visitor that is called within one may look at the step, the head of the
 * procedure, the linked documents and, through `Names`, at the ids that the procedure declares, and at nothing else. A
 * rule that compares steps, or asks the walk, listens to `procedure` or `failure` and reports with `ctx.at(step)`. A test
 * compares what is remembered with what is found afresh on random edits.
 */
export interface Visitors<M extends Messages> {
  document?(document: SyntaxDocument, ctx: RuleContext<M>): void;
  syntaxProblem?(problem: SyntaxProblem, ctx: RuleContext<M>): void;
  shapeProblem?(problem: ShapeProblem, ctx: RuleContext<M>): void;
  unit?(unit: Unit, ctx: RuleContext<M>): void;
  ref?(fact: RefFact, ctx: RuleContext<M>): void;
  declared?(declared: Declared, ctx: RuleContext<M>): void;
  prose?(fact: ProseFact, ctx: RuleContext<M>): void;
  quantity?(fact: QuantityFact, ctx: RuleContext<M>): void;
  condition?(fact: ConditionFact, ctx: RuleContext<M>): void;
  byBuild?(fact: ByBuildFact, ctx: RuleContext<M>): void;
  path?(path: PathRef, ctx: RuleContext<M>): void;
  procedure?(procedure: ProcedureView, ctx: RuleContext<M>): void;
  step?(step: StepView, ctx: RuleContext<M>): void;
  instruction?(instruction: InstructionView, ctx: RuleContext<M>): void;
  /** What fails when the procedure is walked through, in the order in which it shows. */
  failure?(failure: Failure, ctx: RuleContext<M>): void;
  family?(family: FamilyView, ctx: RuleContext<M>): void;
  part?(part: Entry<Part>, ctx: RuleContext<M>): void;
  kit?(kit: KitView, ctx: RuleContext<M>): void;
  kitLine?(line: Line, ctx: RuleContext<M>): void;
  stores?(stores: StoresDocument, ctx: RuleContext<M>): void;
  /** Called last, with all findings of the document that stand once concessions are taken into account. */
  outcome?(outcome: CheckOutcome, ctx: RuleContext<M>): void;
}

/** What the other rules found, as the rules about concessions look at it. */
export interface CheckOutcome {
  readonly findings: readonly Finding[];
  /** Those of them that no concession lets stand. */
  readonly standing: readonly Finding[];
  /** For each concession of the procedure, in order: the findings that it matches. */
  readonly matches: readonly (readonly Finding[])[];
  /** Ids of the rules that looked. */
  readonly rules: ReadonlySet<string>;
}

export interface RuleDoc {
  /** What is reported, in a sentence. */
  readonly what: string;
  /** What it leads to at the bench. */
  readonly why: string;
  readonly wrong: Example;
  readonly right: Example;
}

export interface RuleDefinition<M extends Messages> {
  readonly id: string;
  readonly group: RuleGroup;
  readonly since: string;
  readonly severity: Severity;
  readonly fix: FixSafety | 'none';
  readonly doc: RuleDoc;
  readonly messages: M;
  readonly check: Visitors<M>;
}

/** A rule with its messages' types worked in, so that rules of all kinds can stand in one list. */
export interface Rule extends Omit<RuleDefinition<Messages>, 'check'> {
  readonly check: Visitors<Messages>;
}

/** Declares a rule. A message key that does not exist, or wrong arguments for one, does not compile. */
export function defineRule<const M extends Messages>(definition: RuleDefinition<M>): Rule {
  return definition as unknown as Rule;
}
