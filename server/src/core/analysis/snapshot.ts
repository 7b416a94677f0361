import type { SyntaxDocument } from '../syntax/readDocument';
import type { Settings } from './settingsValue';
import { isInside, type Uri } from './uri';

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
  readonly #preferences: ReadonlyMap<Uri, Settings>;

  constructor(
    roots: readonly Uri[],
    files: ReadonlyMap<Uri, FileState> = new Map(),
    preferences: ReadonlyMap<Uri, Settings> = new Map(),
  ) {
    this.roots = roots;
    this.#files = files;
    this.#preferences = preferences;
  }

  /** The innermost opened folder that holds a file. */
  rootOf(uri: Uri): Uri | undefined {
    const holding = this.roots.filter((root) => isInside(uri, root));
    return holding.sort((a, b) => b.length - a.length)[0];
  }

  /** What whoever opened the folder of a file prefers where no settings document says. */
  preferencesFor(uri: Uri): Settings | undefined {
    const root = this.rootOf(uri);
    return root === undefined ? undefined : this.#preferences.get(root);
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
    return new Snapshot(this.roots, files, this.#preferences);
  }

  withRoots(roots: readonly Uri[]): Snapshot {
    return new Snapshot(roots, this.#files, this.#preferences);
  }

  withPreferences(root: Uri, settings: Settings): Snapshot {
    return new Snapshot(this.roots, this.#files, new Map([...this.#preferences, [root, settings]]));
  }
}
