import { documentValue } from '../analysis/documentUnit';
import type { Uri } from '../analysis/uri';
import type { ReleasedText } from '../rules/ruleContext';
import type { Change } from './change';
import { headlineOf } from './changeWords';
import type { Comparison } from './compareVersions';
import { documentsOf, type Version } from './version';

/**
 * For each procedure that was released in the older version: its revision then, and what has changed since on its sheets,
 * in its own text or in what it links to, and is more than wording. By the URI in the newer version.
 */
export function releasedTexts(
  before: Version,
  pairs: Comparison['pairs'],
  changes: readonly Change[],
): Map<Uri, ReleasedText> {
  const newUri = new Map(pairs.map((pair) => [pair.before.uri, pair.after.uri]));
  const texts = new Map<Uri, ReleasedText>();
  for (const document of documentsOf(before)) {
    const value = documentValue(document, 'procedure');
    const uri = newUri.get(document.uri) ?? document.uri;
    if (value?.status?.value !== 'released' || value.revision === undefined) continue;
    const met = changes.filter(
      (change) => mustBeRaisedFor(change) && change.reached.some((one) => [uri, document.uri].includes(one.uri)),
    );
    texts.set(uri, { revision: value.revision.text, changes: met.map(headlineOf) });
  }
  return texts;
}

/** What stands at the head of a procedure about itself is no change of the work. */
function mustBeRaisedFor({ class: one, of, kind }: Change): boolean {
  return (one === 'hurt' || one === 'fits') && !(of.kind === 'procedure' && kind !== 'changed');
}
