import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import { type Asked, answerBy, type Ground } from './asked';
import { FileChecker } from './checkOne';

/** Whether this is a thread that was started to check documents. */
export function isCheckThread(): boolean {
  return !isMainThread && (workerData as Partial<Ground> | null)?.witnessmark === 'check';
}

/** Answers what the main thread asks, until it ends this one. */
export function runCheckThread(): void {
  const { roots, today } = workerData as Ground;
  const checker = new FileChecker(roots, today);
  parentPort?.on('message', async (asked: Asked) => parentPort?.postMessage(await answerBy(checker, asked)));
}
