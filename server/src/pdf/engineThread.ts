import type { Carrier } from './carrier';
import type { DrawnSheet } from './drawnPages';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';
import type { WasmCarrier } from './wasmEngine';

export type Typeset = Uint8Array | { problem: PdfProblem };

export type Drawn = DrawnSheet | { problem: PdfProblem };

export interface TypesetRequest {
  id: number;
  files: JobFiles;
  /** What is made of them. */
  as: 'pdf' | 'drawings';
}

export interface TypesetResponse {
  id: number;
  result: Typeset | Drawn;
  /** Whether the thread ends after this answer. */
  last: boolean;
}

/** The other side of a thread that holds the engine: one sheet at a time. */
export interface EngineThread {
  /** It answers nothing more. */
  readonly hasEnded: boolean;
  typeset(files: JobFiles, as: TypesetRequest['as']): Promise<TypesetResponse>;
  end(): Promise<void>;
}

/** The engine in a thread of its own, so that an editor never waits for it; one that has ended is started again. */
export function createThreadCarrier(startThread: () => EngineThread): Carrier {
  let current: EngineThread | undefined;
  // One sheet after the other: a thread that ends with its answer must not take a waiting sheet with it.
  let queue: Promise<unknown> = Promise.resolve();
  const typeset = async (files: JobFiles, as: TypesetRequest['as']): Promise<Typeset | Drawn> => {
    if (current === undefined || current.hasEnded) current = startThread();
    const { result, last } = await current.typeset(files, as);
    if (last) current = undefined;
    return result;
  };
  const inTurn = (files: JobFiles, as: TypesetRequest['as']): Promise<Typeset | Drawn> => {
    const printed = queue.then(() => typeset(files, as));
    queue = printed;
    return printed;
  };
  return {
    typeset: (files) => inTurn(files, 'pdf') as Promise<Typeset>,
    draw: (files) => inTurn(files, 'drawings') as Promise<Drawn>,
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
  { id, files, as }: TypesetRequest,
): Promise<TypesetResponse> {
  try {
    const carrier = await engine;
    const result = await (as === 'pdf' ? carrier.typeset(files) : carrier.draw(files));
    return { id, result, last: carrier.isSpent() };
  } catch (error) {
    // After a fault inside it the engine's memory cannot be trusted.
    const message = error instanceof Error ? error.message : String(error);
    return { id, result: { problem: { kind: 'noEngine', message } }, last: true };
  }
}
