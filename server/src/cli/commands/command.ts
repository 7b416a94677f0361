import type { Terminal } from '../terminal';

/** A command of the program: what `--help` says of it, and what it does; it gives the exit code. */
export interface Command {
  readonly help: string;
  run(terminal: Terminal, args: readonly string[]): Promise<number> | number;
}
