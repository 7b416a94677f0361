import { startWasmEngine, type WasmCarrier } from '../../pdf/wasmEngine';
import { readDrawingWasm, readEngineWasm, readPdfAssets } from './assets';

/** The engine as WebAssembly in this thread, from the files that lie beside the program. */
export function createWasmCarrier(): Promise<WasmCarrier> {
  return startWasmEngine(readEngineWasm(), async () => readDrawingWasm(), readPdfAssets());
}
