import { linkedUris } from './links';
import type { FileState, Snapshot } from './snapshot';
import { settingsCandidates, type Uri } from './uri';

/**
 * Every file whose coming, going or changing can change what is found in a document: what it links to, what those link
 * to, and the settings that may apply; also those that do not exist yet. The document itself is not among them.
 */
export function dependenciesOf(snapshot: Snapshot, uri: Uri): Set<Uri> {
  const waiting: Uri[] = [uri, ...settingsCandidates(uri, snapshot.roots)];
  const found = new Set<Uri>();
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    if (found.has(next)) continue;
    found.add(next);
    const document = snapshot.document(next);
    if (document !== undefined) waiting.push(...linkedUris(snapshot, document));
  }
  found.delete(uri);
  return found;
}

/** The files as they are, to be compared with later ones. */
export function statesOf(snapshot: Snapshot, uris: Iterable<Uri>): Map<Uri, FileState | undefined> {
  return new Map([...uris].map((uri) => [uri, snapshot.file(uri)]));
}

export function areSame(snapshot: Snapshot, states: ReadonlyMap<Uri, FileState | undefined>): boolean {
  return [...states].every(([uri, state]) => snapshot.file(uri) === state);
}
