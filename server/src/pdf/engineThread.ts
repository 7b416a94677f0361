import type { Carrier } from './carrier';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';
import type { WasmCarrier } from './wasmEngine';

export type Typeset = Uint8Array | { problem: PdfProblem };

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

/** The other side of a thread that holds the engine: one sheet at a time. */
export interface EngineThread {
  /** It answers nothing more. */
  readonly hasEnded: boolean;
  typeset(files: JobFiles): Promise<TypesetResponse>;
  end(): Promise<void>;
}

/** The engine in a thread of its own, so that an editor never waits for it; one that has ended is started again. */
export function createThreadCarrier(startThread: () => EngineThread): Carrier {
  let current: EngineThread | undefined;
  // One sheet after the other: a thread that ends with its answer must not take a waiting sheet with it.
  let queue: Promise<unknown> = Promise.resolve();
  const typeset = async (files: JobFiles): Promise<Typeset> => {
    if (current === undefined || current.hasEnded) current = startThread();
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

/**
 * What the thread itself does with a request. It answers every one, so that nobody waits for a lost one, and says that
 * it ends when its engine is spent or has failed; whoever asks next starts another.
 */
export async function answerTypeset(
  engine: Promise<WasmCarrier>,
  { id, files }: TypesetRequest,
): Promise<TypesetResponse> {
  try {
    const carrier = await engine;
    return { id, result: await carrier.typeset(files), last: carrier.isSpent() };
  } catch (error) {
    // After a fault inside it the engine's memory cannot be trusted.
    const message = error instanceof Error ? error.message : String(error);
    return { id, result: { problem: { kind: 'noEngine', message } }, last: true };
  }
}
