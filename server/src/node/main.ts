import process from 'node:process';
import { type Connection, createConnection, ProposedFeatures } from 'vscode-languageserver/node';
import { version } from '../../../package.json';
import { startServer } from '../lsp/server';
import { NodeHost } from './nodeHost';

/** The entry of the language server: over Node's own channel when the extension starts it, or with `--stdio`. */
function main(): void {
  const connection = connect();
  if (connection === undefined) return;
  // What escapes every net must not end the work of whoever is typing; it is logged, and the server goes on.
  // Not over the connection, which may be what has failed.
  const log = (error: unknown) => process.stderr.write(`${error instanceof Error ? error.stack : error}\n`);
  process.stderr.on('error', () => {});
  process.on('uncaughtException', log);
  process.on('unhandledRejection', log);
  startServer(connection, new NodeHost(connection), version);
}

function connect(): Connection | undefined {
  try {
    return createConnection(ProposedFeatures.all);
  } catch (error) {
    process.stderr.write(`Witnessmark's language server is started by an editor, or with --stdio: ${error}\n`);
    process.exitCode = 2;
    return undefined;
  }
}

main();
