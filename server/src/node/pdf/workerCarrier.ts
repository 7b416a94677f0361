import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Carrier } from '../../pdf/carrier';
import {
  createThreadCarrier,
  type EngineThread,
  type TypesetRequest,
  type TypesetResponse,
} from '../../pdf/engineThread';
import type { JobFiles } from '../../pdf/printJob';

/** The bundled worker beside this file, or nothing when running from source. */
export function bundledWorker(): string | undefined {
  const path = join(__dirname, 'typstWorker.js');
  return existsSync(path) ? path : undefined;
}

export function createWorkerCarrier(workerFile: string): Carrier {
  return createThreadCarrier(() => new Thread(workerFile));
}

/** One thread and the one sheet it works on. An idle thread does not keep the process alive. */
class Thread implements EngineThread {
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

  typeset(files: JobFiles, as: TypesetRequest['as']): Promise<TypesetResponse> {
    this.next += 1;
    this.worker.ref();
    this.worker.postMessage({ id: this.next, files, as } satisfies TypesetRequest);
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
