import process from 'node:process';
import { type Connection, createConnection, type MessageStrategy, ProposedFeatures } from 'vscode-languageserver/node';
import { FirstAnswer } from './firstAnswer';

/** The entry of the language server: over Node's own channel when the extension starts it, or with `--stdio`. */
function main(): void {
  const firstAnswer = new FirstAnswer();
  const connection = connect(firstAnswer);
  if (connection === undefined) return;
  // What escapes every net must not end the work of whoever is typing; it is logged, and the server goes on.
  // Not over the connection, which may be what has failed.
  const log = (error: unknown) => process.stderr.write(`${error instanceof Error ? error.stack : error}\n`);
  process.stderr.on('error', () => {});
  process.on('uncaughtException', log);
  process.on('unhandledRejection', log);
  firstAnswer.answerOn(connection);
}

function connect(messageStrategy: MessageStrategy): Connection | undefined {
  try {
    return createConnection(ProposedFeatures.all, { messageStrategy });
  } catch (error) {
    process.stderr.write(`Witnessmark's language server is started by an editor, or with --stdio: ${error}\n`);
    process.exitCode = 2;
    return undefined;
  }
}

main();
