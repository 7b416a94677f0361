import type { ClientCapabilities, Connection, ServerCapabilities } from 'vscode-languageserver';
import type { Session } from './session';

/** One thing that the server can do: what it announces, and the handlers that do it. */
export interface Feature {
  capability(client: ClientCapabilities, session: Session): Partial<ServerCapabilities>;
  register(connection: Connection, session: Session): void;
  /** The client is ready to be asked and told things. */
  started?(connection: Connection, session: Session): Promise<void> | void;
}
