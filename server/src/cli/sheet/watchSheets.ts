import { existsSync, type FSWatcher, readFileSync, watch } from 'node:fs';
import { dirname, resolve } from 'node:path';
import { CommandProblem } from '../problem';
import { plural } from '../report/text';
import type { Terminal } from '../terminal';

/** Editors write a file in several strokes; what comes within this many milliseconds is one change. */
const SETTLED_AFTER = 120;

/** Prints the sheets once and says which files they were made from. */
export type PrintOnce = (sources: (paths: readonly string[]) => void) => Promise<void>;

/**
 * Prints again whenever a source has changed, until `stop` is aborted. A broken state is told and waited out. Never
 * rejects for what a document says.
 */
export async function watchSheets(terminal: Terminal, print: PrintOnce, stop: AbortSignal): Promise<void> {
  const sources = new WatchedSources();
  try {
    while (!stop.aborted) {
      await printTelling(terminal, print, sources);
      if (stop.aborted) break;
      terminal.err(`Watching ${plural(sources.count, 'file')}; press Ctrl+C to end\n`);
      await sources.change(stop);
    }
  } finally {
    sources.close();
  }
}

async function printTelling(terminal: Terminal, print: PrintOnce, sources: WatchedSources): Promise<void> {
  try {
    await print((paths) => sources.add(paths));
  } catch (error) {
    if (!(error instanceof CommandProblem)) throw error;
    terminal.err(`witnessmark: ${error.message}\n`);
  }
}

/** Files that something was made from, those that were looked for in vain included, and what stood in them then. */
class WatchedSources {
  readonly #texts = new Map<string, string | undefined>();
  readonly #folders = new Map<string, FSWatcher>();
  #wake: () => void = () => {};

  get count(): number {
    return [...this.#texts.values()].filter((text) => text !== undefined).length;
  }

  add(paths: readonly string[]): void {
    for (const path of paths.map((each) => resolve(each))) {
      // What changes between the reading and this moment is seen as no change; the next stroke brings it.
      if (!this.#texts.has(path)) this.#texts.set(path, textAt(path));
      this.#watchFolder(dirname(path));
    }
  }

  /** Resolves when a source has another text than before, or when it is time to stop. */
  async change(stop: AbortSignal): Promise<void> {
    while (!stop.aborted && !this.#takeIn()) await this.#stirring(stop);
  }

  close(): void {
    for (const watcher of this.#folders.values()) watcher.close();
  }

  /** Folders are watched, not files: many programs save by putting a new file in the old one's place. */
  #watchFolder(folder: string): void {
    const nearest = existsSync(folder) ? folder : undefined;
    if (nearest === undefined || this.#folders.has(nearest)) return;
    const watcher = watch(nearest, () => this.#wake());
    // A folder that goes away has nothing more to tell.
    watcher.on('error', () => {
      watcher.close();
      this.#folders.delete(nearest);
    });
    this.#folders.set(nearest, watcher);
  }

  #takeIn(): boolean {
    const changed = [...this.#texts].filter(([path, text]) => textAt(path) !== text);
    for (const [path] of changed) this.#texts.set(path, textAt(path));
    return changed.length > 0;
  }

  #stirring(stop: AbortSignal): Promise<void> {
    return new Promise((resolve) => {
      let settling: NodeJS.Timeout | undefined;
      const end = (): void => {
        this.#wake = () => {};
        stop.removeEventListener('abort', end);
        clearTimeout(settling);
        resolve();
      };
      this.#wake = () => {
        settling ??= setTimeout(end, SETTLED_AFTER);
      };
      stop.addEventListener('abort', end, { once: true });
    });
  }
}

function textAt(path: string): string | undefined {
  try {
    return readFileSync(path, 'latin1');
  } catch {
    return undefined;
  }
}
