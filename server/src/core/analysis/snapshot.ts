import type { SyntaxDocument } from '../syntax/readDocument';
import type { Uri } from './uri';

/** What is known of a file. */
export type FileState =
  | { readonly is: 'document'; readonly document: SyntaxDocument }
  /** A file that is no document of ours, such as a figure. */
  | { readonly is: 'file'; readonly text: string }
  | { readonly is: 'missing' }
  | { readonly is: 'unreadable'; readonly reason: string };

/**
 * All files as they are at one moment. It never changes: a change gives a new one, and what was computed from the old
 * one stays true of it.
 */
export class Snapshot {
  readonly #files: ReadonlyMap<Uri, FileState>;
  /** Folders that were opened; a path that leaves all of them is refused. Empty where none was. */
  readonly roots: readonly Uri[];

  constructor(roots: readonly Uri[], files: ReadonlyMap<Uri, FileState> = new Map()) {
    this.roots = roots;
    this.#files = files;
  }

  /** Undefined where nobody has looked for the file yet. */
  file(uri: Uri): FileState | undefined {
    return this.#files.get(uri);
  }

  document(uri: Uri): SyntaxDocument | undefined {
    const state = this.#files.get(uri);
    return state?.is === 'document' ? state.document : undefined;
  }

  get uris(): Iterable<Uri> {
    return this.#files.keys();
  }

  with(uri: Uri, state: FileState | undefined): Snapshot {
    const files = new Map(this.#files);
    if (state === undefined) files.delete(uri);
    else files.set(uri, state);
    return new Snapshot(this.roots, files);
  }

  withRoots(roots: readonly Uri[]): Snapshot {
    return new Snapshot(roots, this.#files);
  }
}
