import type { Uri } from '../core/analysis/uri';
import { diagnosticsIn } from './findingsReport';
import type { FoundIn } from './findingsStore';
import type { Session } from './session';

/** Sends what is found to a client that does not ask for it. */
export class PushedDiagnostics {
  readonly #session: Session;
  /** The documents for which the client shows something. */
  readonly #shown = new Set<Uri>();

  constructor(session: Session) {
    this.#session = session;
  }

  send(uri: Uri, found: FoundIn | undefined): void {
    const diagnostics = found === undefined ? [] : diagnosticsIn(found);
    // An open document is always told of, so that the client knows which version of the text the findings are of.
    if (diagnostics.length === 0 && found?.version === undefined && !this.#shown.delete(uri)) return;
    if (diagnostics.length > 0 || found?.version !== undefined) this.#shown.add(uri);
    const params = { uri: this.#session.clientUriOf(uri), diagnostics };
    const { connection } = this.#session;
    void connection.sendDiagnostics(found?.version === undefined ? params : { ...params, version: found.version });
  }
}
