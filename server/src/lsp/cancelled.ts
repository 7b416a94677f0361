import type { CancellationToken } from 'vscode-languageserver';

/** Nobody waits for the answer any more. Thrown where work for it goes on, and answered by the session. */
export class Cancelled extends Error {}

/** Ends work that nobody waits for any more. A token changes only while work waits for something else. */
export function throwIfCancelled(token: CancellationToken | undefined): void {
  if (token?.isCancellationRequested === true) throw new Cancelled();
}
