import { DiagnosticRefreshRequest } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import type { FindingsReport } from './findingsReport';
import { findingsReport } from './findingsReport';
import { refresh } from './refreshViews';
import type { Session } from './session';

/** What a client has that asks for findings: it is told to ask again where they have changed without its doing. */
export class AskedDiagnostics {
  readonly #session: Session;
  /** What was last answered of a document in which nobody has typed since; who types asks again by himself. */
  readonly #answered = new Map<Uri, string>();

  constructor(session: Session) {
    this.#session = session;
  }

  /** The findings of a document as it is now. Undefined where there is no such document. */
  async answer(uri: Uri): Promise<FindingsReport | undefined> {
    const checked = await this.#session.checked.of(uri);
    if (checked === undefined) return undefined;
    const report = findingsReport(this.#session, checked);
    if (this.#session.openDocument(uri) !== undefined) this.#answered.set(uri, report.id);
    return report;
  }

  /** Somebody types in a document. */
  forget(uri: Uri): void {
    this.#answered.delete(uri);
  }

  /** All is checked; asks the client to ask where it has something else. */
  settled(): void {
    const { client, diagnostics } = this.#session;
    const differing = [...this.#answered].filter(([uri, id]) => diagnostics.found.get(uri)?.id !== id);
    for (const [uri] of differing) this.#answered.delete(uri);
    const stale = differing.filter(([uri]) => this.#session.openDocument(uri) !== undefined);
    if (stale.length === 0 || client.workspace?.diagnostics?.refreshSupport !== true) return;
    refresh(this.#session, DiagnosticRefreshRequest.type);
  }
}
