import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { readOptions } from '../options';
import { CommandProblem } from '../problem';

export const SERVE_HELP = `witnessmark serve --stdio

Runs the language server for any editor that speaks the Language Server Protocol.
`;

/** Runs \`witnessmark serve\`: hands the process over to the language server, which ends it. */
export function serve(args: readonly string[]): Promise<number> {
  const { values } = readOptions('serve', args, { stdio: { type: 'boolean' } });
  if (values.stdio !== true)
    throw new CommandProblem('The server speaks over standard input and output; run witnessmark serve --stdio');
  const server = join(__dirname, 'server.js');
  if (!existsSync(server)) throw new CommandProblem('The language server is not built; run npm run build');
  createRequire(__filename)(server);
  // The server ends the process itself when its client says so or goes away.
  return new Promise(() => {});
}
