import { parentPort } from 'node:worker_threads';
import type { Carrier } from './pdf/carrier';
import type { PdfProblem } from './pdf/problem';
import { createWasmCarrier } from './pdf/wasmCarrier';
import type { TypesetRequest, TypesetResponse } from './pdf/workerCarrier';

// The thread that holds the typesetting engine. It answers every request, so that nobody waits for a lost one.
const carrier: Promise<Carrier> = createWasmCarrier();

parentPort?.on('message', async ({ id, files }: TypesetRequest) => {
  const result = await typeset(files);
  parentPort?.postMessage({ id, result } satisfies TypesetResponse);
});

async function typeset(files: TypesetRequest['files']): Promise<Uint8Array | { problem: PdfProblem }> {
  try {
    return await (await carrier).typeset(files);
  } catch (error) {
    // After a fault inside it the engine's memory cannot be trusted: the thread ends, the next sheet starts another.
    parentPort?.close();
    return { problem: { kind: 'noEngine', message: error instanceof Error ? error.message : String(error) } };
  }
}
