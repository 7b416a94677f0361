import { documentValue } from '../analysis/documentUnit';
import { followPath } from '../analysis/links';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';

/**
 * The procedures of a snapshot that are written for a family. A family may mention a tool that only they know, since
 * its texts are printed on their sheets.
 */
export function readersOfFamily(snapshot: Snapshot, family: SyntaxDocument): readonly SyntaxDocument[] {
  const known = remembered.get(snapshot) ?? readersByFamily(snapshot);
  remembered.set(snapshot, known);
  return known.get(family.uri) ?? [];
}

const remembered = new WeakMap<Snapshot, ReadonlyMap<Uri, readonly SyntaxDocument[]>>();

function readersByFamily(snapshot: Snapshot): Map<Uri, SyntaxDocument[]> {
  const readers = new Map<Uri, SyntaxDocument[]>();
  for (const uri of snapshot.uris) {
    const document = snapshot.document(uri);
    const path = document === undefined ? undefined : documentValue(document, 'procedure')?.family;
    const target = path === undefined ? undefined : followPath(snapshot, uri, path);
    if (document === undefined || target?.is !== 'document') continue;
    const family = target.document.uri;
    readers.set(family, [...(readers.get(family) ?? []), document]);
  }
  return readers;
}
