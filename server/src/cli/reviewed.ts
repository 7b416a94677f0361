import type { Change } from '../core/review/change';
import { compareVersions } from '../core/review/compareVersions';
import { compareFindings, type FindingsChange } from '../core/review/findingsChange';
import { documentsOf, nameIn, type Version } from '../core/review/version';
import { checkDocument } from '../core/rules/checkDocument';
import type { Finding } from '../core/rules/finding';
import type { ChosenTrees } from './history/chooseTrees';
import { loadVersions } from './history/loadVersions';

/** What a review says: the changes, worst first, and what they do to the findings. */
export interface Reviewed {
  readonly labels: { readonly before: string; readonly after: string };
  readonly before: Version;
  readonly after: Version;
  /** Files whose contents differ. */
  readonly files: readonly string[];
  readonly changes: readonly Change[];
  readonly findings: FindingsChange;
}

/** Compares two versions and checks in both what the difference can reach. */
export async function reviewTrees({ before, after }: ChosenTrees, today: string): Promise<Reviewed> {
  const loaded = await loadVersions(before, after);
  const { changes, pairs } = compareVersions(loaded.before, loaded.after);
  const newNames = new Map(pairs.map((pair) => [pair.before.uri, nameIn(loaded.after, pair.after.uri)]));
  const [old, now] = [findingsOf(loaded.before, today), findingsOf(loaded.after, today)];
  const isOld = new Set(old);
  const nameOf = (finding: Finding) =>
    isOld.has(finding)
      ? (newNames.get(finding.uri) ?? nameIn(loaded.before, finding.uri))
      : nameIn(loaded.after, finding.uri);
  return {
    labels: { before: before.label, after: after.label },
    before: loaded.before,
    after: loaded.after,
    files: loaded.changed,
    changes,
    findings: compareFindings(old, now, nameOf),
  };
}

function findingsOf(version: Version, today: string): Finding[] {
  return documentsOf(version).flatMap((document) => checkDocument(version.snapshot, document, { today }).findings);
}
