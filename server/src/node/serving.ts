import type { Connection, InitializeParams } from 'vscode-languageserver';
import { serve } from '../lsp/server';
import { NodeHost } from './nodeHost';

/** Everything behind the first answer: the entry loads it once the client has that. */
export function startServing(connection: Connection, params: InitializeParams): void {
  serve(connection, new NodeHost(connection), params);
}
