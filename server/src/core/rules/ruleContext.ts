import type { FamilyView } from '../analysis/familyView';
import type { KitView } from '../analysis/kitView';
import type { InstructionView, ProcedureView, StepView } from '../analysis/procedureView';
import type { Settings } from '../analysis/settings';
import type { Snapshot } from '../analysis/snapshot';
import type { BuildSet, BuildSpace } from '../builds';
import { describeBuilds } from '../builds';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import type { Messages, Rule } from './defineRule';
import type { Finding, Fix, FixSafety } from './finding';

/** What is being looked at, from the whole document down to the instruction. */
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
  readonly step: StepView | undefined;
  readonly instruction: InstructionView | undefined;
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
  readonly where?: { readonly set: BuildSet; readonly space: BuildSpace };
  /** Other places; `document` is left out where the place is in this document. */
  readonly related?: readonly {
    readonly range: ItemRange;
    readonly document?: SyntaxDocument;
    readonly message: string;
  }[];
  /** Worked out only when somebody asks for fixes. */
  readonly fixes?: () => readonly FixDraft[];
}

/** Where findings go, and the rule whose visitor runs. */
export interface Reporting {
  rule: Rule;
  emit(finding: Finding): void;
}

/**
 * What a rule is given: its surroundings, and the means to report. All rules share the one of a place, since one for
 * each rule and fact would be most of what a check allocates; the rule that runs is known to the reporting.
 */
export class RuleContext<M extends Messages = Messages> {
  constructor(
    readonly around: Surroundings,
    readonly reporting: Reporting,
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
  get step(): StepView | undefined {
    return this.around.step;
  }
  get instruction(): InstructionView | undefined {
    return this.around.instruction;
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

  report<Key extends keyof M & string>(
    range: ItemRange,
    key: Key,
    args: Parameters<M[Key]>,
    details: ReportDetails = {},
  ): void {
    const { document, settings, step } = this.around;
    const { rule } = this.reporting;
    const severity = settings.severities.get(rule.id) ?? rule.severity;
    if (severity === 'off') return;
    const message = rule.messages[key] as ((...args: Parameters<M[Key]>) => string) | undefined;
    const { where } = details;
    this.reporting.emit({
      rule: rule.id,
      severity,
      uri: document.uri,
      span: document.spanOf(range),
      message: message?.(...args) ?? key,
      about: details.about ?? [],
      step: step?.id,
      builds: where === undefined ? '' : describeBuilds(where.set, where.space),
      related: (details.related ?? []).map((one) => this.#related(one)),
      fixes: () => (details.fixes?.() ?? []).map((draft) => this.#fix(rule, draft)),
    });
  }

  #related(one: NonNullable<ReportDetails['related']>[number]): Finding['related'][number] {
    const document = one.document ?? this.document;
    return { uri: document.uri, span: document.spanOf(one.range), message: one.message };
  }

  #fix(rule: Rule, draft: FixDraft): Fix {
    const safety = draft.safety ?? (rule.fix === 'none' ? 'suggestion' : rule.fix);
    return { title: draft.title, safety, edits: draft.edits.map((edit) => this.#edit(edit)) };
  }

  #edit(edit: FixEdit): Fix['edits'][number] {
    if ('span' in edit) return { uri: edit.document.uri, edit: { span: edit.span, text: edit.text } };
    return { uri: this.document.uri, edit: { span: this.document.spanOf(edit.range), text: edit.text } };
  }
}
