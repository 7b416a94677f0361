import { parentPort } from 'node:worker_threads';
import { answerTypeset, type TypesetRequest } from '../pdf/engineThread';
import { createWasmCarrier } from './pdf/wasmCarrier';

// The thread that holds the typesetting engine.
const engine = createWasmCarrier();

parentPort?.on('message', async (request: TypesetRequest) => {
  const response = await answerTypeset(engine, request);
  parentPort?.postMessage(response);
  if (response.last) parentPort?.close();
});
