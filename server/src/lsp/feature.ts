import type { Connection } from 'vscode-languageserver';
import type { Session } from './session';

/** One thing that the server can do: the handlers that do it. What it announces stands in `capabilities.ts`. */
export interface Feature {
  register(connection: Connection, session: Session): void;
  /** The client is ready to be asked and told things. */
  started?(connection: Connection, session: Session): Promise<void> | void;
}
