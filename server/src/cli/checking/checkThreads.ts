import { availableParallelism } from 'node:os';
import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { CommandProblem } from '../problem';
import { type CheckedFile, FileChecker } from './checkOne';

interface Ground {
  readonly witnessmark: 'check';
  readonly roots: readonly string[];
  readonly today: string;
}

interface Asked {
  readonly id: number;
  readonly path: string;
}

type Answered = { readonly id: number } & ({ readonly file: CheckedFile } | { readonly problem: string });

/** Below so many documents a second thread costs more than it saves: it has to load the program first. */
const WORTH_A_THREAD = 60;
/** So many documents are under way in each thread, so that none waits for the next. */
const AHEAD = 3;
const MOST_THREADS = 8;

/** Whether this is a thread that was started to check documents. */
export function isCheckThread(): boolean {
  return !isMainThread && (workerData as Partial<Ground> | null)?.witnessmark === 'check';
}

/** Answers what the main thread asks, until it ends this one. */
export function runCheckThread(): void {
  const { roots, today } = workerData as Ground;
  const checker = new FileChecker(roots, today);
  parentPort?.on('message', async ({ id, path }: Asked) => {
    const answer: Answered = await checker.check(path).then(
      (file) => ({ id, file }),
      (error: unknown) => ({ id, problem: error instanceof Error ? error.message : String(error) }),
    );
    parentPort?.postMessage(answer);
  });
}

/** How many threads are worth starting beside none. */
export function threadsFor(documents: number): number {
  return Math.min(MOST_THREADS, availableParallelism(), Math.floor(documents / WORTH_A_THREAD));
}

/** Checks files in threads of their own; what comes first is given first. */
export class CheckThreads {
  readonly #threads: readonly Worker[];
  readonly #waiting = new Map<number, (answer: Answered) => void>();

  constructor(program: string, count: number, roots: readonly string[], today: string) {
    const ground: Ground = { witnessmark: 'check', roots, today };
    this.#threads = Array.from({ length: count }, () => new Worker(program, { workerData: ground }));
    for (const thread of this.#threads) {
      thread.on('message', (answer: Answered) => this.#answered(answer));
      // A thread that breaks down must not leave anybody waiting.
      thread.on('error', (error) => this.#failed(error));
    }
  }

  /** The results in the order of the paths, a few asked for beforehand. */
  async *check(paths: readonly string[]): AsyncGenerator<CheckedFile> {
    const ahead = this.#threads.length * AHEAD;
    const asked: Promise<Answered>[] = [];
    try {
      for (let next = 0; next < paths.length; next++) {
        while (asked.length < Math.min(paths.length, next + ahead)) asked.push(this.#ask(asked.length, paths));
        const answer = await asked[next];
        if (answer === undefined) break;
        if ('problem' in answer) throw new CommandProblem(answer.problem);
        yield answer.file;
      }
    } finally {
      await Promise.all(this.#threads.map((thread) => thread.terminate()));
    }
  }

  #ask(id: number, paths: readonly string[]): Promise<Answered> {
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve);
      this.#threads[id % this.#threads.length]?.postMessage({ id, path: paths[id] ?? '' } satisfies Asked);
    });
  }

  #answered(answer: Answered): void {
    this.#waiting.get(answer.id)?.(answer);
    this.#waiting.delete(answer.id);
  }

  #failed(error: unknown): void {
    for (const id of [...this.#waiting.keys()])
      this.#answered({ id, problem: `A thread broke down: ${String(error)}` });
  }
}
