import { linkedUris } from '../../analysis/links';
import type { Snapshot } from '../../analysis/snapshot';
import { settingsCandidates, type Uri } from '../../analysis/uri';

/** A file that the sheet is made from, by a name that is the same wherever the folder lies. */
export interface NamedSource {
  /** The path from the folder that holds all sources, with forward slashes. */
  readonly name: string;
  /** With line feeds alone and no byte order mark, as every checkout has it. */
  readonly text: string;
}

/**
 * Every file that can change what the sheet of a procedure says: the procedure, what it links to, what those link to, and
 * the settings that hold. Sorted by name; a file that is missing is left out.
 */
export function sourcesOf(snapshot: Snapshot, uri: Uri): NamedSource[] {
  const texts = new Map<Uri, string>();
  const waiting: Uri[] = [uri, ...nearestSettings(snapshot, uri)];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const text = texts.has(next) ? undefined : textAt(snapshot, next);
    if (text === undefined) continue;
    texts.set(next, text);
    const document = snapshot.document(next);
    if (document !== undefined) waiting.push(...linkedUris(snapshot, document));
  }
  const start = commonFolder([...texts.keys()]).length;
  const named = [...texts].map(([at, text]) => ({ name: at.slice(start), text: normalised(text) }));
  return named.sort((one, other) => (one.name < other.name ? -1 : 1));
}

function nearestSettings(snapshot: Snapshot, uri: Uri): Uri[] {
  const nearest = settingsCandidates(uri, snapshot.roots).find((one) => snapshot.document(one) !== undefined);
  return nearest === undefined ? [] : [nearest];
}

function textAt(snapshot: Snapshot, uri: Uri): string | undefined {
  const state = snapshot.file(uri);
  if (state?.is === 'document') return state.document.text;
  return state?.is === 'file' ? state.text : undefined;
}

/** A checkout that writes other line ends, or an editor that marks the encoding, has not changed the procedure. */
function normalised(text: string): string {
  return text.replace(/^\uFEFF/u, '').replace(/\r\n?/gu, '\n');
}

/** With its last slash. */
function commonFolder(uris: readonly Uri[]): string {
  const [first = '', ...others] = uris;
  let length = first.lastIndexOf('/') + 1;
  while (!others.every((uri) => uri.startsWith(first.slice(0, length)))) {
    length = first.lastIndexOf('/', length - 2) + 1;
  }
  return first.slice(0, length);
}
