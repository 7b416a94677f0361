import { CommandProblem } from '../problem';
import type { Terminal } from '../terminal';

export const SHEET_HELP = `witnessmark sheet FILE --build BUILD [options]

Prints the step sheet of a procedure for one build.
`;

export async function sheet(_terminal: Terminal, _args: readonly string[]): Promise<number> {
  throw new CommandProblem('Not there yet');
}
