import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { Worker } from 'node:worker_threads';
import type { Carrier } from './carrier';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';

export interface TypesetRequest {
  id: number;
  files: JobFiles;
}

export interface TypesetResponse {
  id: number;
  result: Uint8Array | { problem: PdfProblem };
}

type Waiting = Map<number, (result: Uint8Array | { problem: PdfProblem }) => void>;

/** The bundled worker beside this file, or nothing when running from source. */
export function bundledWorker(): string | undefined {
  const path = join(__dirname, 'typstWorker.js');
  return existsSync(path) ? path : undefined;
}

/** The engine in a thread of its own, so that an editor never waits for it. The thread does not keep the process alive. */
export function createWorkerCarrier(workerFile: string): Carrier {
  const worker = new Worker(workerFile);
  const waiting: Waiting = new Map();
  let failure: PdfProblem | undefined;
  let next = 0;
  worker.on('message', ({ id, result }: TypesetResponse) => settle(worker, waiting, id, result));
  const fail = (message: string): void => {
    failure = { kind: 'noEngine', message };
    for (const id of [...waiting.keys()]) settle(worker, waiting, id, { problem: failure });
  };
  worker.on('error', (error: Error) => fail(error.message));
  worker.on('exit', () => fail('its thread has ended'));
  worker.unref();
  return {
    typeset: (files) =>
      new Promise((resolve) => {
        if (failure !== undefined) return resolve({ problem: failure });
        next += 1;
        waiting.set(next, resolve);
        worker.ref();
        worker.postMessage({ id: next, files } satisfies TypesetRequest);
      }),
    close: async () => void (await worker.terminate()),
  };
}

function settle(worker: Worker, waiting: Waiting, id: number, result: Uint8Array | { problem: PdfProblem }): void {
  waiting.get(id)?.(result);
  waiting.delete(id);
  if (waiting.size === 0) worker.unref();
}
