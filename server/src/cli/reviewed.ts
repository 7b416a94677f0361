import { compareVersions } from '../core/review/compareVersions';
import { compareFindings } from '../core/review/findingsChange';
import { releasedTexts } from '../core/review/releasedTexts';
import { nameIn, type Version } from '../core/review/version';
import type { Reviewed } from '../core/reviewPage/reviewed';
import { type CheckOptions, checkDocument } from '../core/rules/checkDocument';
import type { Finding } from '../core/rules/finding';
import type { ChosenTrees } from './history/chooseTrees';
import { loadVersions } from './history/loadVersions';

/** Compares two versions and checks in both what the difference can reach. */
export async function reviewTrees({ before, after }: ChosenTrees, today: string): Promise<Reviewed> {
  const loaded = await loadVersions(before, after);
  const { changes, pairs } = compareVersions(loaded.before, loaded.after);
  const newNames = new Map(pairs.map((pair) => [pair.before.uri, nameIn(loaded.after, pair.after.uri)]));
  const released = releasedTexts(loaded.before, pairs, changes);
  const [old, now] = findingsOf(loaded, today, (uri) => released.get(uri));
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

/**
 * What is found in either version. Each document is checked in both before the next one is, so that what is the same in both
 * is still remembered.
 */
function findingsOf(
  { before, after }: { readonly before: Version; readonly after: Version },
  today: string,
  released: CheckOptions['released'] & {},
): readonly [Finding[], Finding[]] {
  const found: [Finding[], Finding[]] = [[], []];
  for (const uri of new Set([...before.uris, ...after.uris])) {
    const [old, now] = [before.snapshot.document(uri), after.snapshot.document(uri)];
    if (old !== undefined && before.uris.includes(uri))
      found[0].push(...checkDocument(before.snapshot, old, { today }).findings);
    if (now !== undefined && after.uris.includes(uri))
      found[1].push(...checkDocument(after.snapshot, now, { today, released }).findings);
  }
  return found;
}
