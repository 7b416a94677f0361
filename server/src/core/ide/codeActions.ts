import type { Uri } from '../analysis/uri';
import type { Finding, Fix } from '../rules/finding';
import type { Span } from '../text/span';
import { allSafeFixes, type EditIn, withoutOverlaps } from './combineFixes';

/** Something that can be done about findings, as a menu offers it. */
export interface FixAction {
  readonly kind: 'one' | 'all-alike' | 'all-safe';
  readonly title: string;
  /** The findings that it mends. */
  readonly findings: readonly Finding[];
  /** It may be done by a key without choosing it from the menu. */
  readonly preferred: boolean;
  readonly edits: readonly EditIn[];
}

/** The fixes of the findings that a range touches; below them, each that can be done at several places in one go. */
export function fixesAt(findings: readonly Finding[], range: Span): FixAction[] {
  const here = findings.filter((finding) => finding.span.start <= range.end && range.start <= finding.span.end);
  const single = here.flatMap((finding) => finding.fixes().map((fix, nth) => fixOne(finding, fix, nth)));
  return [...single, ...fixesAlike(findings, single)];
}

/** Every safe fix of a document at once; undefined where there is none. */
export function fixAllSafe(findings: readonly Finding[], uri: Uri): FixAction | undefined {
  const { mended, edits } = allSafeFixes(findings, uri);
  if (mended.length === 0) return undefined;
  const title = mended.length === 1 ? 'Apply the one safe fix' : `Apply all ${mended.length} safe fixes`;
  return { kind: 'all-safe', title, findings: mended, preferred: false, edits };
}

function fixOne(finding: Finding, fix: Fix, nth: number): FixAction {
  // Only what may be done unseen is offered to a key: a suggestion is for a person to agree to.
  const preferred = fix.safety === 'safe' && nth === 0;
  return { kind: 'one', title: fix.title, findings: [finding], preferred, edits: fix.edits };
}

function fixesAlike(findings: readonly Finding[], single: readonly FixAction[]): FixAction[] {
  const offered = new Map(single.map((action) => [`${action.findings[0]?.rule} ${action.title}`, action]));
  return [...offered.values()].flatMap((action) => {
    const rule = action.findings[0]?.rule;
    const alike = findings.flatMap((finding) => {
      const fix = finding.rule === rule ? finding.fixes().find((one) => one.title === action.title) : undefined;
      return fix === undefined ? [] : [{ finding, fix }];
    });
    const { mended, edits } = withoutOverlaps(alike);
    if (mended.length < 2) return [];
    const title = `${action.title} at all ${mended.length} places (${rule})`;
    return [{ kind: 'all-alike' as const, title, findings: mended, preferred: false, edits }];
  });
}
