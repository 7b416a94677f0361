import type { FamilyView } from '../analysis/familyView';
import type { KitView } from '../analysis/kitView';
import type { InstructionView, ProcedureView, StepView } from '../analysis/procedureView';
import type { Settings } from '../analysis/settings';
import type { Snapshot } from '../analysis/snapshot';
import type { BuildSet, BuildSpace } from '../builds';
import { describeBuilds, type ForkWords } from '../builds';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import type { Working } from '../workings/working';
import type { Messages, Rule } from './defineRule';
import type { Finding, Fix, FixSafety } from './finding';

/** The document that is looked at and what it is part of. */
export interface Surroundings {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly settings: Settings;
  /** The day for which dates are judged, as `2026-10-12`. */
  readonly today: string;
  /** The ids of all rules, which settings and concessions name. */
  readonly ruleIds: ReadonlySet<string>;
  readonly procedure: ProcedureView | undefined;
  /** The family that the document is, or is for. */
  readonly family: FamilyView | undefined;
  readonly kit: KitView | undefined;
  /** The released text that this one is compared with, where somebody compares. */
  readonly released: ReleasedText | undefined;
  /** What the same check finds in another reading of the document, so that a fix can be proved before it is offered. */
  findingsIn(snapshot: Snapshot, document: SyntaxDocument): readonly Finding[];
}

/** The last released text of a procedure, and what has changed since that a revision must be raised for. */
export interface ReleasedText {
  readonly revision: string;
  /** Each change in a line, the worst first. */
  readonly changes: readonly string[];
}

/** A change that a fix makes: a range of this document, or a span of another one. */
export type FixEdit =
  | { readonly range: ItemRange; readonly text: string }
  | { readonly document: SyntaxDocument; readonly span: Span; readonly text: string };

export interface FixDraft {
  readonly title: string;
  readonly safety?: FixSafety;
  readonly edits: readonly FixEdit[];
}

export interface ReportDetails {
  /** The ids concerned. */
  readonly about?: readonly string[];
  /** The builds and outcomes for which it holds, with their space; left out where it holds for all. */
  readonly where?: { readonly set: BuildSet; readonly space: BuildSpace; readonly forks?: ForkWords };
  /** Other places; `document` is left out where the place is in this document. */
  readonly related?: readonly {
    readonly range: ItemRange;
    readonly document?: SyntaxDocument;
    readonly message: string;
  }[];
  /** Worked out only when somebody asks for fixes. */
  readonly fixes?: () => readonly FixDraft[];
  /** The calculation that it rests on. */
  readonly working?: () => readonly Working[];
}

/** Where findings go, and the rule whose visitor runs. */
export interface Reporting {
  rule: Rule;
  emit(draft: FindingDraft): void;
}

/**
 * A finding that knows its place within an item but not where the item stands: it stays true while the step it was
 * found in stays the same, however much changes above it.
 */
export interface FindingDraft {
  readonly rule: Rule;
  /** The finding, in a reading of the document that holds the same items. */
  placedIn(document: SyntaxDocument): Finding;
}

/**
 * What a rule is given: its surroundings, and the means to report. All rules share the one of a place, since one for
 * each rule and fact would be most of what a check allocates; the rule that runs is known to the reporting.
 */
export class RuleContext<M extends Messages = Messages> {
  constructor(
    readonly around: Surroundings,
    readonly reporting: Reporting,
    /** The step and the instruction that are looked at, where it is one. */
    readonly step: StepView | undefined,
    readonly instruction: InstructionView | undefined,
  ) {}

  get document(): SyntaxDocument {
    return this.around.document;
  }
  get snapshot(): Snapshot {
    return this.around.snapshot;
  }
  get procedure(): ProcedureView | undefined {
    return this.around.procedure;
  }
  get family(): FamilyView | undefined {
    return this.around.family;
  }
  get kit(): KitView | undefined {
    return this.around.kit;
  }
  get ruleIds(): ReadonlySet<string> {
    return this.around.ruleIds;
  }
  get today(): string {
    return this.around.today;
  }
  /** The builds that conditions of this document speak of. */
  get space(): BuildSpace | undefined {
    return this.around.procedure?.space ?? this.around.family?.space;
  }

  /** The same for what is found about the whole procedure and shown in a step, or at an instruction of it. */
  at(step: StepView, instruction?: InstructionView): RuleContext<M> {
    return new RuleContext(this.around, this.reporting, step, instruction);
  }

  report<Key extends keyof M & string>(
    range: ItemRange,
    key: Key,
    args: Parameters<M[Key]>,
    details: ReportDetails = {},
  ): void {
    const { document: original, settings } = this.around;
    const { step } = this;
    const { rule } = this.reporting;
    const severity = settings.severities.get(rule.id) ?? rule.severity;
    if (severity === 'off' || (rule.group !== 'form' && isTorn(range))) return;
    const say = rule.messages[key] as ((...args: Parameters<M[Key]>) => string) | undefined;
    const { where } = details;
    const message = say?.(...args) ?? key;
    const builds = where === undefined ? '' : describeBuilds(where.set, where.space, where.forks);
    const holds = this.#holds(where);
    const placedIn = (document: SyntaxDocument): Finding => ({
      rule: rule.id,
      severity,
      uri: document.uri,
      span: document.spanOf(range),
      message,
      about: details.about ?? [],
      step: step?.id,
      builds,
      where: () => holds,
      related: (details.related ?? []).map((one) => relatedPlace(one, original, document)),
      working: () => details.working?.() ?? [],
      fixes: () =>
        (details.fixes?.() ?? []).filter((draft) => isOf(document, draft)).map((draft) => fixOf(rule, draft, document)),
    });
    this.reporting.emit({ rule, placedIn });
  }

  /** Where nothing narrower is said, a finding holds for the builds that have the instruction or the step. */
  #holds(where: ReportDetails['where']): BuildSet | undefined {
    if (where !== undefined && where.space === this.around.procedure?.space) return where.set;
    return this.instruction?.where ?? this.step?.where;
  }
}

/** What seems to stand in a text that cannot be read is an echo of what tore it, which has a finding of its own. */
function isTorn({ item }: ItemRange): boolean {
  return item.problems.length > 0 && item.problems.some(({ kind }) => kind === 'broken');
}

/** A place in the reading in which the finding was made is a place in the one that it is shown in. */
function relatedPlace(
  one: NonNullable<ReportDetails['related']>[number],
  original: SyntaxDocument,
  shown: SyntaxDocument,
): Finding['related'][number] {
  const document = one.document === undefined || one.document === original ? shown : one.document;
  return { uri: document.uri, span: document.spanOf(one.range), message: one.message };
}

/** A fix of a remembered finding may change other steps as well, which need no longer be what they were. */
function isOf(document: SyntaxDocument, { edits }: FixDraft): boolean {
  return edits.every((edit) => 'span' in edit || document.holds(edit.range.item));
}

function fixOf(rule: Rule, draft: FixDraft, document: SyntaxDocument): Fix {
  const safety = draft.safety ?? (rule.fix === 'none' ? 'suggestion' : rule.fix);
  const edits = draft.edits.map((edit) => {
    if ('span' in edit) return { uri: edit.document.uri, edit: { span: edit.span, text: edit.text } };
    return { uri: document.uri, edit: { span: document.spanOf(edit.range), text: edit.text } };
  });
  return { title: draft.title, safety, edits };
}
