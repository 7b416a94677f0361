import type { Uri } from '../core/analysis/uri';
import type { FindingsReport } from './findingsReport';

/** What was last found in a document. */
export interface FoundIn extends FindingsReport {
  /** Of the text in which it was found, as the client counts; undefined for a document that is not open. */
  readonly version: number | undefined;
}

type Listener = (uri: Uri, found: FoundIn | undefined) => void;

/** What was last found in every document, for whoever tells the client of it. */
export class FindingsStore {
  readonly #found = new Map<Uri, FoundIn>();
  readonly #listeners = new Set<Listener>();

  get(uri: Uri): FoundIn | undefined {
    return this.#found.get(uri);
  }

  get all(): Iterable<readonly [Uri, FoundIn]> {
    return this.#found;
  }

  has(uri: Uri): boolean {
    return this.#found.has(uri);
  }

  /** Undefined where there is no such document any more. Who listens hears of what differs. */
  set(uri: Uri, found: FoundIn | undefined): void {
    const before = this.#found.get(uri);
    if (found?.id === before?.id && found?.version === before?.version) return;
    if (found === undefined) this.#found.delete(uri);
    else this.#found.set(uri, found);
    for (const listener of [...this.#listeners]) listener(uri, found);
  }

  /** Hears of every difference from now on, until what is given back is called. */
  listen(listener: Listener): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
}
