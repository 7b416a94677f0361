import { areSame, dependenciesOf, statesOf } from '../core/analysis/dependencies';
import type { Settings } from '../core/analysis/settings';
import type { FileState, Snapshot } from '../core/analysis/snapshot';
import type { Uri } from '../core/analysis/uri';
import type { FileSource, Workspace } from '../core/analysis/workspace';
import { type CheckResult, checkDocument } from '../core/rules/checkDocument';
import type { SyntaxDocument } from '../core/syntax/readDocument';

/** A document with what was found in it, and the files that this depends on. */
export interface CheckedDocument {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly result: CheckResult;
  readonly dependencies: ReadonlySet<Uri>;
}

interface Remembered {
  readonly checked: CheckedDocument;
  readonly states: ReadonlyMap<Uri, FileState | undefined>;
  readonly roots: readonly Uri[];
  readonly preferences: Settings | undefined;
  readonly today: string;
}

/** What is asked of the surroundings before each check. */
export interface CheckSurroundings {
  /** The day for which dates are judged, as `2026-10-12`. */
  today(): string;
  /** Gets ready whatever else the workspace needs to know of a document. */
  prepare(uri: Uri): Promise<void>;
}

/** Checks documents, and remembers what was found for as long as nothing that it depends on changes. */
export class CheckedDocuments {
  readonly #workspace: Workspace;
  readonly #files: FileSource;
  readonly #surroundings: CheckSurroundings;
  readonly #remembered = new Map<Uri, Remembered>();

  constructor(workspace: Workspace, files: FileSource, surroundings: CheckSurroundings) {
    this.#workspace = workspace;
    this.#files = files;
    this.#surroundings = surroundings;
  }

  /** Undefined where there is no such document. */
  async of(uri: Uri): Promise<CheckedDocument | undefined> {
    await this.#surroundings.prepare(uri);
    await this.#workspace.loadLinked(uri, this.#files);
    // From here on nothing waits, so that the snapshot is one and the same for all of it.
    const { snapshot } = this.#workspace;
    const document = snapshot.document(uri);
    if (document === undefined) {
      this.#remembered.delete(uri);
      return undefined;
    }
    return this.#known(uri, snapshot) ?? this.#check(snapshot, document);
  }

  /** Lets go of a document's tree and findings. */
  forget(uri: Uri): void {
    this.#remembered.delete(uri);
  }

  #known(uri: Uri, snapshot: Snapshot): CheckedDocument | undefined {
    const one = this.#remembered.get(uri);
    if (one === undefined || one.today !== this.#surroundings.today() || one.roots !== snapshot.roots) return undefined;
    if (one.preferences !== snapshot.preferencesFor(uri)) return undefined;
    return areSame(snapshot, one.states) ? one.checked : undefined;
  }

  #check(snapshot: Snapshot, document: SyntaxDocument): CheckedDocument {
    const { uri } = document;
    const today = this.#surroundings.today();
    const dependencies = dependenciesOf(snapshot, uri);
    const result = checkDocument(snapshot, document, { today });
    const checked: CheckedDocument = { snapshot, document, result, dependencies };
    const states = statesOf(snapshot, [uri, ...dependencies]);
    // A file that nobody has looked for yet may turn up without anything having changed.
    if (![...states.values()].includes(undefined)) {
      this.#remembered.set(uri, {
        checked,
        states,
        roots: snapshot.roots,
        preferences: snapshot.preferencesFor(uri),
        today,
      });
    }
    return checked;
  }
}
