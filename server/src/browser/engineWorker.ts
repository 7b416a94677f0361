import { answerTypeset, type TypesetRequest } from '../pdf/engineThread';
import { startWasmEngine, type WasmCarrier } from '../pdf/wasmEngine';
import type { EngineStart } from './browserEngineThread';

declare const self: DedicatedWorkerGlobalScope;

// The thread that holds the typesetting engine: the first message starts it, and each one after that is a sheet.
let engine: Promise<WasmCarrier> | undefined;

self.onmessage = async ({ data }: MessageEvent<EngineStart | TypesetRequest>) => {
  if ('program' in data) engine = startWasmEngine(data.program, async () => data.drawing, data.assets);
  else if (engine !== undefined) self.postMessage(await answerTypeset(engine, data));
};
