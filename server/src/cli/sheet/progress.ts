import type { Terminal } from '../terminal';

/** One line that says what is being printed, on a terminal only, and gone when it is done. */
export class Progress {
  #done = 0;
  #width = 0;

  constructor(
    private readonly terminal: Terminal,
    private readonly count: number,
  ) {}

  at(what: string): void {
    this.#done += 1;
    if (this.terminal.isShown !== true || this.count < 2) return;
    const line = `Printing ${this.#done} of ${this.count}: ${what}`.slice(0, 79);
    this.terminal.err(`\r${line.padEnd(this.#width)}`);
    this.#width = line.length;
  }

  /** Makes room for a line that stays. */
  clear(): void {
    if (this.#width > 0) this.terminal.err(`\r${' '.repeat(this.#width)}\r`);
    this.#width = 0;
  }

  end(): void {
    this.clear();
  }
}
