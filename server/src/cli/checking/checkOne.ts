import { dependenciesOf } from '../../core/analysis/dependencies';
import type { FileState } from '../../core/analysis/snapshot';
import { Workspace } from '../../core/analysis/workspace';
import { checkDocument } from '../../core/rules/checkDocument';
import { documentKindOf } from '../../core/syntax/documentKind';
import { NodeFiles, uriOfPath } from '../../node/nodeFiles';
import { CommandProblem } from '../problem';
import { digestOf, MISSING } from './fileDigests';
import { type PlainResult, plainResult } from './plainResult';

/** What checking a document gave, with digests of its text and of all that it depends on, as they were read for it. */
export interface CheckedFile {
  readonly result: PlainResult;
  readonly digest: string;
  readonly dependencies: readonly (readonly [uri: string, digest: string])[];
}

/** Checks documents one after another; a procedure is forgotten once it is checked, what many link to is kept. */
export class FileChecker {
  readonly #workspace: Workspace;
  readonly #files = new NodeFiles();
  readonly #today: string;
  readonly #digests = new WeakMap<FileState, string>();

  constructor(roots: readonly string[], today: string) {
    this.#workspace = new Workspace(roots);
    this.#today = today;
  }

  async check(path: string): Promise<CheckedFile> {
    const uri = uriOfPath(path);
    const workspace = this.#workspace;
    await workspace.loadLinked(uri, this.#files);
    const { snapshot } = workspace;
    const document = snapshot.document(uri);
    if (document === undefined) throw new CommandProblem(`Cannot read ${path}: ${whyNot(snapshot.file(uri))}`);
    const result = plainResult(checkDocument(snapshot, document, { today: this.#today }));
    const digest = this.#digestOf(snapshot.file(uri));
    const dependencies = [...dependenciesOf(snapshot, uri)].map(
      (one) => [one, this.#digestOf(snapshot.file(one))] as const,
    );
    if (documentKindOf(uri) === 'procedure') workspace.forget(uri);
    return { result, digest, dependencies };
  }

  /** What many documents link to is digested once. */
  #digestOf(state: FileState | undefined): string {
    if (state === undefined) return MISSING;
    const digest = this.#digests.get(state) ?? digestOfState(state);
    this.#digests.set(state, digest);
    return digest;
  }
}

function digestOfState(state: FileState): string {
  switch (state.is) {
    case 'document':
      return digestOf(state.document.text);
    case 'file':
      return digestOf(state.text);
    case 'missing':
      return MISSING;
    case 'unreadable':
      return state.reason;
  }
}

function whyNot(state: FileState | undefined): string {
  if (state?.is === 'unreadable') return state.reason;
  return state?.is === 'missing' ? 'there is no such file or folder' : 'it is no document';
}
