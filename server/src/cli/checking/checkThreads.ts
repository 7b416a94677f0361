import { availableParallelism } from 'node:os';
import { setImmediate } from 'node:timers/promises';
import { Worker } from 'node:worker_threads';
import { CommandProblem } from '../problem';
import { type Answered, type Asked, answerBy, type Ground } from './asked';
import type { CheckedFile, FileChecker } from './checkOne';

/** Below so many documents for each, a further thread costs more than it saves: it has to load the program first. */
const WORTH_A_THREAD = 60;
/** So many documents are under way in each thread, so that none waits for the next. */
const AHEAD = 3;
const MOST_THREADS = 8;

/** How many threads are worth starting beside the one that everything begins in. */
export function threadsFor(documents: number): number {
  return Math.min(MOST_THREADS, availableParallelism(), Math.floor(documents / WORTH_A_THREAD)) - 1;
}

/**
 * Checks files in this thread and in others beside it. Each takes the next file that nobody has begun with, so that no
 * thread has to wait for another one; this one only looks at what the others have sent in between two files.
 */
export class CheckThreads {
  readonly #threads: readonly Worker[];
  readonly #answers = new Map<number, Answered>();
  #paths: readonly string[] = [];
  #next = 0;
  #broken: string | undefined;
  #arrived: () => void = () => {};

  constructor(program: string, count: number, ground: Ground) {
    this.#threads = Array.from({ length: count }, () => new Worker(program, { workerData: ground }));
    for (const thread of this.#threads) {
      thread.on('message', (answer: Answered) => {
        this.#ask(thread);
        this.#answered(answer);
      });
      // A thread that breaks down must not leave anybody waiting.
      thread.on('error', (error) => this.#failed(error));
    }
  }

  /** The results in the order of the paths. */
  async *check(paths: readonly string[], checker: FileChecker): AsyncGenerator<CheckedFile> {
    this.#paths = paths;
    try {
      for (let i = 0; i < AHEAD; i++) for (const thread of this.#threads) this.#ask(thread);
      for (let wanted = 0; wanted < paths.length; wanted++) {
        const answer = await this.#answerTo(wanted, checker);
        if ('problem' in answer) throw new CommandProblem(answer.problem);
        yield answer.file;
      }
    } finally {
      await Promise.all(this.#threads.map((thread) => thread.terminate()));
    }
  }

  /** Checks what nobody has begun with until the answer is there. */
  async #answerTo(wanted: number, checker: FileChecker): Promise<Answered> {
    for (;;) {
      const answer = this.#answers.get(wanted);
      this.#answers.delete(wanted);
      if (answer !== undefined) return answer;
      if (this.#broken !== undefined) throw new CommandProblem(this.#broken);
      const id = this.#take();
      if (id === undefined) await new Promise<void>((resolve) => (this.#arrived = resolve));
      else {
        this.#answered(await answerBy(checker, { id, path: this.#paths[id] ?? '' }));
        // What has arrived in the meantime is taken in.
        await setImmediate();
      }
    }
  }

  #take(): number | undefined {
    return this.#next < this.#paths.length ? this.#next++ : undefined;
  }

  #ask(thread: Worker): void {
    const id = this.#take();
    if (id !== undefined) thread.postMessage({ id, path: this.#paths[id] ?? '' } satisfies Asked);
  }

  #answered(answer: Answered): void {
    this.#answers.set(answer.id, answer);
    this.#arrived();
  }

  #failed(error: unknown): void {
    this.#broken = `A thread broke down: ${String(error)}`;
    this.#arrived();
  }
}
