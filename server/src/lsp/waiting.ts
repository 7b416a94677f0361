import type { CancellationToken, WorkDoneProgressReporter } from 'vscode-languageserver';
import { throwIfCancelled } from './cancelled';

/** Somebody who waits for an answer that may take long. */
export interface Waiting {
  readonly token: CancellationToken;
  /** Tells how far the work has come, where that was asked for. */
  readonly progress: WorkDoneProgressReporter;
}

/** Does work that whoever waits for it sees and may stop. */
export async function whileWaiting<Result>(
  { progress }: Waiting,
  title: string,
  work: () => Promise<Result>,
): Promise<Result> {
  progress.begin(title, undefined, undefined, true);
  try {
    return await work();
  } finally {
    progress.done();
  }
}

/** Goes on with work of which so many documents are done; ends it where nobody waits any more. */
export function goOn(waiting: Waiting | undefined, done: number): void {
  throwIfCancelled(waiting?.token);
  waiting?.progress.report(`${done} ${done === 1 ? 'document' : 'documents'}`);
}
