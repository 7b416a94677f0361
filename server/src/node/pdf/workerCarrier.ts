import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Carrier } from '../../pdf/carrier';
import type { JobFiles } from '../../pdf/printJob';
import type { PdfProblem } from '../../pdf/problem';

export interface TypesetRequest {
  id: number;
  files: JobFiles;
}

export interface TypesetResponse {
  id: number;
  result: Typeset;
  /** Whether the thread ends after this answer. */
  last: boolean;
}

type Typeset = Uint8Array | { problem: PdfProblem };

/** The bundled worker beside this file, or nothing when running from source. */
export function bundledWorker(): string | undefined {
  const path = join(__dirname, 'typstWorker.js');
  return existsSync(path) ? path : undefined;
}

/** The engine in a thread of its own, so that an editor never waits for it; one that has ended is started again. */
export function createWorkerCarrier(workerFile: string): Carrier {
  let current: Thread | undefined;
  // One sheet after the other: a thread that ends with its answer must not take a waiting sheet with it.
  let queue: Promise<unknown> = Promise.resolve();
  const typeset = async (files: JobFiles): Promise<Typeset> => {
    if (current === undefined || current.hasEnded) current = new Thread(workerFile);
    const { result, last } = await current.typeset(files);
    if (last) current = undefined;
    return result;
  };
  return {
    typeset: (files) => {
      const printed = queue.then(() => typeset(files));
      queue = printed;
      return printed;
    },
    close: async () => {
      await current?.end();
      current = undefined;
    },
  };
}

/** One thread and the one sheet it works on. An idle thread does not keep the process alive. */
class Thread {
  hasEnded = false;
  private readonly worker: Worker;
  private answer: ((response: TypesetResponse) => void) | undefined;
  private next = 0;

  constructor(workerFile: string) {
    this.worker = new Worker(workerFile);
    this.worker.on('message', (response: TypesetResponse) => this.settle(response));
    this.worker.on('error', (error: Error) => this.fail(error.message));
    this.worker.on('exit', () => this.fail('its thread has ended'));
    this.worker.unref();
  }

  typeset(files: JobFiles): Promise<TypesetResponse> {
    this.next += 1;
    this.worker.ref();
    this.worker.postMessage({ id: this.next, files } satisfies TypesetRequest);
    return new Promise((resolve) => {
      this.answer = resolve;
    });
  }

  async end(): Promise<void> {
    await this.worker.terminate();
  }

  private fail(message: string): void {
    this.hasEnded = true;
    this.settle({ id: this.next, result: { problem: { kind: 'noEngine', message } }, last: true });
  }

  private settle(response: TypesetResponse): void {
    this.worker.unref();
    this.answer?.(response);
    this.answer = undefined;
  }
}
