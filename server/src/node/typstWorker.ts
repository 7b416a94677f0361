import { parentPort } from 'node:worker_threads';
import type { PdfProblem } from '../pdf/problem';
import { createWasmCarrier } from './pdf/wasmCarrier';
import type { TypesetRequest, TypesetResponse } from './pdf/workerCarrier';

// The thread that holds the typesetting engine. It answers every request, so that nobody waits for a lost one, and
// ends when its engine is spent or has failed; whoever asks next starts another.
const carrier = createWasmCarrier();

parentPort?.on('message', async ({ id, files }: TypesetRequest) => {
  const { result, last } = await typeset(files);
  parentPort?.postMessage({ id, result, last } satisfies TypesetResponse);
  if (last) parentPort?.close();
});

interface Typeset {
  result: Uint8Array | { problem: PdfProblem };
  last: boolean;
}

async function typeset(files: TypesetRequest['files']): Promise<Typeset> {
  try {
    const engine = await carrier;
    return { result: await engine.typeset(files), last: engine.isSpent() };
  } catch (error) {
    // After a fault inside it the engine's memory cannot be trusted.
    const message = error instanceof Error ? error.message : String(error);
    return { result: { problem: { kind: 'noEngine', message } }, last: true };
  }
}
