import type { TypstRenderer } from '@myriaddreamin/typst-ts-renderer';
import type { TypstCompiler } from '@myriaddreamin/typst-ts-web-compiler';
import type { PdfAssets } from './assets';
import type { Carrier } from './carrier';
import { drawnSheet, stepPlaces } from './drawnPages';
import { ownFonts } from './ownFonts';
import type { JobFiles } from './printJob';
import type { PdfProblem } from './problem';

const pdfFormat = 'pdf';
const vectorFormat = 'vector';
const fullDiagnostics = 3;
/** Of the drawing its body and the outlines of its letters, without what would make it answer a pointer. */
const bodyAndOutlines = 3;

// The engine remembers what it has typeset and never forgets it; WebAssembly memory cannot shrink.
const spentAt = 700_000_000;

export interface WasmCarrier extends Carrier {
  /** Whether its memory has grown so far that a new engine in a new thread is better. */
  isSpent(): boolean;
}

/** The engine as WebAssembly in this thread. The first sheet waits for it to be compiled; it then stays warm. */
export async function startWasmEngine(
  program: Uint8Array,
  drawing: () => Promise<Uint8Array>,
  { templates, fonts }: PdfAssets,
): Promise<WasmCarrier> {
  const engine = await import('@myriaddreamin/typst-ts-web-compiler');
  const { memory } = await engine.default({ module_or_path: program });
  const builder = new engine.TypstCompilerBuilder();
  // Without an access model the engine can read nothing but what it is handed.
  builder.set_dummy_access_model();
  for (const font of ownFonts(fonts)) await builder.add_raw_font(font);
  const compiler = await builder.build();
  const take = (files: JobFiles): void => {
    compiler.reset_shadow();
    for (const [name, text] of templates) compiler.add_source(`/${name}`, text);
    for (const [name, bytes] of files) compiler.map_shadow(`/${name}`, bytes);
  };
  let renderer: Promise<TypstRenderer> | undefined;
  return {
    typeset: async (files) => {
      take(files);
      return compiled(compiler, pdfFormat);
    },
    draw: async (files) => {
      renderer ??= startRenderer(drawing);
      const pen = await renderer;
      // From here on nothing waits, so that the files stay those of this sheet.
      take(files);
      const pages = compiled(compiler, vectorFormat);
      return 'problem' in pages ? pages : drawnSheet(drawn(pen, pages), placesIn(compiler));
    },
    close: async () => compiler.free(),
    isSpent: () => memory.buffer.byteLength > spentAt,
  };
}

async function startRenderer(drawing: () => Promise<Uint8Array>): Promise<TypstRenderer> {
  const pen = await import('@myriaddreamin/typst-ts-renderer');
  await pen.default({ module_or_path: await drawing() });
  return new pen.TypstRendererBuilder().build();
}

function drawn(renderer: TypstRenderer, pages: Uint8Array): string {
  const session = renderer.session_from_artifact(pages, vectorFormat);
  try {
    return renderer.svg_data(session, bodyAndOutlines);
  } finally {
    session.free();
  }
}

function placesIn(compiler: TypstCompiler): unknown {
  return JSON.parse(compiler.query('/sheet.typ', undefined, stepPlaces.selector, stepPlaces.field));
}

function compiled(compiler: TypstCompiler, format: string): Uint8Array | { problem: PdfProblem } {
  const { result, diagnostics } = compiler.compile('/sheet.typ', undefined, format, fullDiagnostics) as {
    result?: Uint8Array;
    diagnostics?: { message: string }[];
  };
  if (result !== undefined) return result;
  return { problem: { kind: 'refused', message: diagnostics?.[0]?.message ?? 'the engine gave no reason' } };
}
