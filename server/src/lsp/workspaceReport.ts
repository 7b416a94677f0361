import {
  type CancellationToken,
  DocumentDiagnosticReportKind,
  type PreviousResultId,
  type ResultProgressReporter,
  type WorkDoneProgressReporter,
  type WorkspaceDiagnosticReport,
  type WorkspaceDiagnosticReportPartialResult,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import { throwIfCancelled } from './cancelled';
import { toCoreUri } from './convert';
import { diagnosticsIn, NOTHING_FOUND } from './findingsReport';
import type { FoundIn } from './findingsStore';
import type { Session } from './session';

type Results = ResultProgressReporter<WorkspaceDiagnosticReportPartialResult>;

/**
 * One answer to a client that asks for the findings of all documents. Where it takes them one by one, the answer stays
 * open and every difference is told as it comes, until the client has enough; else it is told once, when all is checked.
 */
export class WorkspaceReport {
  readonly #session: Session;
  readonly #token: CancellationToken;
  /** What the client has of each document. */
  readonly #has: Map<Uri, string>;

  constructor(session: Session, previous: readonly PreviousResultId[], token: CancellationToken) {
    this.#session = session;
    this.#token = token;
    this.#has = new Map(previous.map(({ uri, value }) => [toCoreUri(uri), value]));
  }

  async answer(progress: WorkDoneProgressReporter, results: Results | undefined): Promise<WorkspaceDiagnosticReport> {
    const enough = cancellation(this.#token);
    const settled = this.#session.diagnostics.settled();
    progress.begin('Checking the documents of the folder', undefined, undefined, true);
    const isOver = Promise.race([settled, enough]).then(() => progress.done());
    if (results !== undefined) await this.#stream(results, enough);
    await isOver;
    throwIfCancelled(this.#token);
    return { items: this.#all() };
  }

  async #stream(results: Results, enough: Promise<void>): Promise<void> {
    const { found } = this.#session.diagnostics;
    const tell = (uri: Uri, one: FoundIn | undefined) => {
      if (this.#has.get(uri) !== one?.id) results.report({ items: [this.#item(uri, one)] });
    };
    for (const [uri, one] of found.all) tell(uri, one);
    const stop = found.listen(tell);
    await this.#session.diagnostics.settled();
    for (const uri of [...this.#has.keys()]) if (!found.has(uri)) tell(uri, undefined);
    await enough;
    stop();
  }

  #all(): WorkspaceDocumentDiagnosticReport[] {
    const { found } = this.#session.diagnostics;
    const gone = [...this.#has.keys()].filter((uri) => !found.has(uri));
    return [
      ...[...found.all].map(([uri, one]) => this.#item(uri, one)),
      ...gone.map((uri) => this.#item(uri, undefined)),
    ];
  }

  #item(uri: Uri, found: FoundIn | undefined): WorkspaceDocumentDiagnosticReport {
    const { id } = found ?? NOTHING_FOUND;
    const base = { uri: this.#session.clientUriOf(uri), version: found?.version ?? null, resultId: id };
    const isKnown = this.#has.get(uri) === id;
    if (found === undefined) this.#has.delete(uri);
    else this.#has.set(uri, id);
    if (isKnown) return { ...base, kind: DocumentDiagnosticReportKind.Unchanged };
    return { ...base, kind: DocumentDiagnosticReportKind.Full, items: diagnosticsIn(found ?? NOTHING_FOUND) };
  }
}

function cancellation(token: CancellationToken): Promise<void> {
  if (token.isCancellationRequested) return Promise.resolve();
  return new Promise((resolve) => {
    token.onCancellationRequested(() => resolve());
  });
}
