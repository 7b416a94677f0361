import { createRequire } from 'node:module';
import { join } from 'node:path';
import type { NodeCompiler, NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import type { Carrier } from '../../pdf/carrier';
import { drawnSheet, stepPlaces } from '../../pdf/drawnPages';
import { ownFonts } from '../../pdf/ownFonts';
import type { JobFiles } from '../../pdf/printJob';
import type { PdfProblem } from '../../pdf/problem';
import { readPdfAssets } from './assets';

type NativeModule = typeof import('@myriaddreamin/typst-ts-node-compiler');

// A folder that does not exist: the engine sees the files that are handed to it and none of this machine's.
const nowhere = join(__dirname, 'no-such-folder');

/** The engine as a native module, or nothing where it is not installed for this platform. */
export function createNativeCarrier(): Carrier | undefined {
  const native = loadNative();
  if (native === undefined) return undefined;
  const { templates, fonts } = readPdfAssets();
  const fontBlobs = ownFonts(fonts).map((font) => Buffer.from(font));
  const compiler = native.NodeCompiler.create({ workspace: nowhere, fontArgs: [{ fontBlobs }] });
  const compile = (files: JobFiles): NodeTypstDocument | { problem: PdfProblem } => {
    compiler.resetShadow();
    for (const [name, text] of templates) compiler.addSource(join(nowhere, name), text);
    return compileNative(compiler, files);
  };
  return {
    typeset: async (files) => {
      const document = compile(files);
      if ('problem' in document) return document;
      const bytes = new Uint8Array(compiler.pdf(document));
      compiler.evictCache(3);
      return bytes;
    },
    draw: async (files) => {
      const document = compile(files);
      if ('problem' in document) return document;
      const sheet = drawnSheet(compiler.svg(document), compiler.query(document, stepPlaces));
      compiler.evictCache(3);
      return sheet;
    },
    close: async () => compiler.evictCache(0),
  };
}

function loadNative(): NativeModule | undefined {
  try {
    return createRequire(__filename)('@myriaddreamin/typst-ts-node-compiler') as NativeModule;
  } catch {
    // An optional dependency: the WebAssembly carrier does the same work.
    return undefined;
  }
}

function compileNative(compiler: NodeCompiler, files: JobFiles): NodeTypstDocument | { problem: PdfProblem } {
  for (const [name, bytes] of files) compiler.mapShadow(join(nowhere, name), Buffer.from(bytes));
  const compiled = compiler.compile({ mainFilePath: join(nowhere, 'sheet.typ') });
  const document = compiled.result;
  if (document === null || compiled.hasError()) {
    return { problem: { kind: 'refused', message: firstMessage(compiled.takeDiagnostics()?.shortDiagnostics ?? []) } };
  }
  return document;
}

function firstMessage(diagnostics: readonly { message?: string }[]): string {
  return diagnostics[0]?.message ?? 'the engine gave no reason';
}
