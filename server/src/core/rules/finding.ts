import type { Severity } from '../analysis/settings';
import type { Uri } from '../analysis/uri';
import type { BuildSet } from '../builds';
import type { Span, TextEdit } from '../text/span';
import type { Working } from '../workings/working';

/** Whether a fix can be applied unseen (`safe`), or needs a person who agrees (`suggestion`). */
export type FixSafety = 'safe' | 'suggestion';

export interface Fix {
  /** What it does, as a command: "Write N·m". */
  readonly title: string;
  readonly safety: FixSafety;
  readonly edits: readonly { readonly uri: Uri; readonly edit: TextEdit }[];
}

/** Another place that belongs to a finding: the other half of a contradiction, the cause. */
export interface RelatedPlace {
  readonly uri: Uri;
  readonly span: Span;
  readonly message: string;
}

/** Something to mend, or to let stand by a concession. */
export interface Finding {
  readonly rule: string;
  readonly severity: Severity;
  readonly uri: Uri;
  readonly span: Span;
  /** What is wrong, where and what to do, without the builds. */
  readonly message: string;
  /** The ids concerned, in a fixed order. */
  readonly about: readonly string[];
  /** Id of the step at which it stands. */
  readonly step: string | undefined;
  /** The builds and outcomes for which it holds, in words; empty where it holds for all. */
  readonly builds: string;
  /**
   * The same as a set within the builds of the procedure; undefined where it holds for all, and in other documents. What
   * is wrong in a step that some builds do without holds for the others.
   */
  where(): BuildSet | undefined;
  readonly related: readonly RelatedPlace[];
  /** Worked out when asked for, since most findings are only counted or drawn. */
  fixes(): readonly Fix[];
  /** The calculation that it rests on, where there is one; worked out when asked for. */
  working(): readonly Working[];
}

/** What makes a finding the same finding in another version of the document: never a line number. */
export function identityOf(finding: Finding, documentName: string): string {
  return [finding.rule, documentName, finding.step ?? '', ...finding.about].join('|');
}

/** The message with the builds for which it holds. */
export function fullMessage(finding: Finding): string {
  return finding.builds === '' ? finding.message : `${finding.message} (${finding.builds})`;
}
