import type { Connection, InitializeParams } from 'vscode-languageserver';
import type { Feature } from './feature';
import { codeActions } from './features/codeActions';
import { codeLens } from './features/codeLens';
import { comparing } from './features/comparing';
import { completion } from './features/completion';
import { configuration } from './features/configuration';
import { definition } from './features/definition';
import { diagnostics } from './features/diagnostics';
import { fileChanges } from './features/fileChanges';
import { folders } from './features/folders';
import { formatting } from './features/formatting';
import { hover } from './features/hover';
import { inlayHints } from './features/inlayHints';
import { passingBuilds } from './features/passingBuilds';
import { references } from './features/references';
import { rename } from './features/rename';
import { semanticTokens } from './features/semanticTokens';
import { sheets } from './features/sheets';
import { structure } from './features/structure';
import { symbols } from './features/symbols';
import { textSync } from './features/textSync';
import type { Host } from './host';
import { Session } from './session';

const FEATURES: readonly Feature[] = [
  textSync,
  configuration,
  fileChanges,
  folders,
  diagnostics,
  codeActions,
  codeLens,
  completion,
  hover,
  definition,
  references,
  rename,
  symbols,
  structure,
  formatting,
  semanticTokens,
  inlayHints,
  sheets,
  comparing,
  passingBuilds,
];

/** Serves a client from its first message on, until it goes. */
export function serve(connection: Connection, host: Host, params: InitializeParams): void {
  const session = new Session(connection, host, params);
  connection.onInitialized(() => {
    for (const feature of FEATURES) void session.hear(() => feature.started?.(connection, session));
  });
  connection.onShutdown(() => session.end());
  for (const feature of FEATURES) feature.register(connection, session);
}
