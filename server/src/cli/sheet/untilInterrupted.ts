import process from 'node:process';

/** Lets work go on until somebody interrupts it; the first time it may end what it is at, the second ends it at once. */
export async function untilInterrupted(work: (stop: AbortSignal) => Promise<void>): Promise<void> {
  const stopping = new AbortController();
  const stop = (): void => stopping.abort();
  for (const signal of ['SIGINT', 'SIGTERM'] as const) process.once(signal, stop);
  try {
    await work(stopping.signal);
  } finally {
    for (const signal of ['SIGINT', 'SIGTERM'] as const) process.removeListener(signal, stop);
  }
}
