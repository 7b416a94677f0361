import type { TypstCompiler } from '@myriaddreamin/typst-ts-web-compiler';
import type { PdfAssets } from './assets';
import type { Carrier } from './carrier';
import { ownFonts } from './ownFonts';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';

const pdfFormat = 'pdf';
const fullDiagnostics = 3;

// The engine remembers what it has typeset and never forgets it; WebAssembly memory cannot shrink.
const spentAt = 700_000_000;

export interface WasmCarrier extends Carrier {
  /** Whether its memory has grown so far that a new engine in a new thread is better. */
  isSpent(): boolean;
}

/** The engine as WebAssembly in this thread. The first sheet waits for it to be compiled; it then stays warm. */
export async function startWasmEngine(program: Uint8Array, { templates, fonts }: PdfAssets): Promise<WasmCarrier> {
  const engine = await import('@myriaddreamin/typst-ts-web-compiler');
  const { memory } = await engine.default({ module_or_path: program });
  const builder = new engine.TypstCompilerBuilder();
  // Without an access model the engine can read nothing but what it is handed.
  builder.set_dummy_access_model();
  for (const font of ownFonts(fonts)) await builder.add_raw_font(font);
  const compiler = await builder.build();
  return {
    typeset: async (files) => {
      compiler.reset_shadow();
      for (const [name, text] of templates) compiler.add_source(`/${name}`, text);
      return typesetWasm(compiler, files);
    },
    close: async () => compiler.free(),
    isSpent: () => memory.buffer.byteLength > spentAt,
  };
}

function typesetWasm(compiler: TypstCompiler, files: JobFiles): Uint8Array | { problem: PdfProblem } {
  for (const [name, bytes] of files) compiler.map_shadow(`/${name}`, bytes);
  const { result, diagnostics } = compiler.compile('/sheet.typ', undefined, pdfFormat, fullDiagnostics) as {
    result?: Uint8Array;
    diagnostics?: { message: string }[];
  };
  if (result !== undefined) return result;
  return { problem: { kind: 'refused', message: diagnostics?.[0]?.message ?? 'the engine gave no reason' } };
}
