import { linkedUris } from '../../analysis/links';
import type { FileState, Snapshot } from '../../analysis/snapshot';
import { settingsCandidates, type Uri } from '../../analysis/uri';

/** A file that the sheet is made from, by a name that is the same wherever the folder lies. */
export interface NamedSource {
  /** The path from the folder that holds all sources, with forward slashes. */
  readonly name: string;
  /** The file as the snapshot has it: the same object as long as it is the same text. */
  readonly file: ReadFile;
}

/** A file with a text. */
export type ReadFile = Exclude<FileState, { readonly is: 'missing' | 'unreadable' }>;

/**
 * Every file that can change what the sheet of a procedure says: the procedure, what it links to, what those link to, and
 * the settings that hold. Sorted by name; a file that is missing is left out.
 */
export function sourcesOf(snapshot: Snapshot, uri: Uri): NamedSource[] {
  const files = new Map<Uri, ReadFile>();
  const waiting: Uri[] = [uri, ...nearestSettings(snapshot, uri)];
  for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
    const file = files.has(next) ? undefined : fileAt(snapshot, next);
    if (file === undefined) continue;
    files.set(next, file);
    const document = snapshot.document(next);
    if (document !== undefined) waiting.push(...linkedUris(snapshot, document));
  }
  const start = commonFolder([...files.keys()]).length;
  const named = [...files].map(([at, file]) => ({ name: at.slice(start), file }));
  return named.sort((one, other) => (one.name < other.name ? -1 : 1));
}

function nearestSettings(snapshot: Snapshot, uri: Uri): Uri[] {
  const nearest = settingsCandidates(uri, snapshot.roots).find((one) => snapshot.document(one) !== undefined);
  return nearest === undefined ? [] : [nearest];
}

function fileAt(snapshot: Snapshot, uri: Uri): ReadFile | undefined {
  const state = snapshot.file(uri);
  return state?.is === 'document' || state?.is === 'file' ? state : undefined;
}

/**
 * The text of a file with line feeds alone and no byte order mark: a checkout that writes other line ends, or an editor
 * that marks the encoding, has not changed the procedure.
 */
export function plainText(file: ReadFile): string {
  const text = file.is === 'document' ? file.document.text : file.text;
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
