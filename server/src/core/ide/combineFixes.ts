import type { Uri } from '../analysis/uri';
import type { Finding, Fix } from '../rules/finding';
import type { TextEdit } from '../text/span';

export interface EditIn {
  readonly uri: Uri;
  readonly edit: TextEdit;
}

/** Fixes that can be made at once, and the findings that they mend. */
export interface CombinedFixes {
  readonly mended: readonly Finding[];
  readonly edits: readonly EditIn[];
}

/** The first safe fix of each finding that changes this document alone. */
export function allSafeFixes(findings: readonly Finding[], uri: Uri): CombinedFixes {
  const safe = findings.flatMap((finding) => {
    const fix = finding.fixes().find((one) => one.safety === 'safe' && one.edits.every((edit) => edit.uri === uri));
    return fix === undefined ? [] : [{ finding, fix }];
  });
  return withoutOverlaps(safe);
}

/** Leaves out a fix that touches what an earlier one changes: it has to be worked out again from the changed text. */
export function withoutOverlaps(fixes: readonly { readonly finding: Finding; readonly fix: Fix }[]): CombinedFixes {
  const mended: Finding[] = [];
  const edits: EditIn[] = [];
  for (const { finding, fix } of fixes) {
    if (fix.edits.length === 0 || fix.edits.some((one) => edits.some((other) => touches(one, other)))) continue;
    mended.push(finding);
    edits.push(...fix.edits);
  }
  return { mended, edits };
}

function touches(a: EditIn, b: EditIn): boolean {
  return a.uri === b.uri && a.edit.span.start <= b.edit.span.end && b.edit.span.start <= a.edit.span.end;
}
