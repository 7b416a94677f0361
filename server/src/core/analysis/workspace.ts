import { documentKindOf } from '../syntax/documentKind';
import { readDocument } from '../syntax/readDocument';
import { ReadingMemo } from '../syntax/readingMemo';
import type { DocumentText } from '../text/documentText';
import { linkedUris } from './links';
import type { Settings } from './settingsValue';
import { type FileState, Snapshot } from './snapshot';
import { settingsCandidates, type Uri } from './uri';

/** What a shell found at a URI. */
export type SourceText =
  | { readonly is: 'text'; readonly text: string }
  | { readonly is: 'missing' }
  | { readonly is: 'unreadable'; readonly reason: string };

/** What somebody writes just now in an editor; it comes with one edit after another. */
export interface OpenText {
  readonly is: 'open';
  readonly content: DocumentText;
}

/** How a workspace gets at files: the only way out of the core. */
export interface FileSource {
  read(uri: Uri): Promise<SourceText>;
}

/**
 * The files as they come and go. It holds the newest snapshot and what was remembered of earlier readings; whoever
 * computes takes the snapshot and is not disturbed by what comes later.
 */
export class Workspace {
  #snapshot: Snapshot;
  readonly #memos = new Map<Uri, ReadingMemo>();

  constructor(roots: readonly Uri[] = []) {
    this.#snapshot = new Snapshot(roots);
  }

  get snapshot(): Snapshot {
    return this.#snapshot;
  }

  setRoots(roots: readonly Uri[]): void {
    this.#snapshot = this.#snapshot.withRoots(roots);
  }

  /** What holds below an opened folder where no settings document says. */
  setPreferences(root: Uri, settings: Settings): void {
    this.#snapshot = this.#snapshot.withPreferences(root, settings);
  }

  set(uri: Uri, source: SourceText | OpenText): void {
    if (source.is === 'missing' || source.is === 'unreadable') {
      this.#snapshot = this.#snapshot.with(uri, source);
      return;
    }
    const text = source.is === 'open' ? source.content : source.text;
    if (!this.#isSame(uri, text)) this.#snapshot = this.#snapshot.with(uri, this.#read(uri, text));
  }

  /** Forgets a file, so that it is looked for again when somebody links to it. */
  forget(uri: Uri): void {
    this.#snapshot = this.#snapshot.with(uri, undefined);
    this.#memos.delete(uri);
  }

  /** Gets every file that a document links to, and what those link to, and the settings that may apply. */
  async loadLinked(uri: Uri, source: FileSource): Promise<void> {
    const waiting: Uri[] = [uri, ...settingsCandidates(uri, this.#snapshot.roots)];
    const seen = new Set<Uri>();
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift()) {
      if (seen.has(next)) continue;
      seen.add(next);
      if (this.#snapshot.file(next) === undefined) this.set(next, await source.read(next));
      const document = this.#snapshot.document(next);
      if (document !== undefined) waiting.push(...linkedUris(this.#snapshot, document));
    }
  }

  #isSame(uri: Uri, text: string | DocumentText): boolean {
    const state = this.#snapshot.file(uri);
    if (state?.is === 'file') return state.text === wholeOf(text);
    if (state?.is !== 'document' || state.document.content.length !== text.length) return false;
    return typeof text === 'string' ? state.document.text === text : state.document.content.isSame(text);
  }

  #read(uri: Uri, text: string | DocumentText): FileState {
    const kind = documentKindOf(uri);
    if (kind === undefined) return { is: 'file', text: wholeOf(text) };
    const memo = this.#memos.get(uri) ?? new ReadingMemo();
    this.#memos.set(uri, memo);
    return { is: 'document', document: readDocument(uri, kind, text, memo) };
  }
}

function wholeOf(text: string | DocumentText): string {
  return typeof text === 'string' ? text : text.whole;
}
