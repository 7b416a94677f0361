import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What the typesetting engine needs beside the sheet; read once and shared by both carriers. */
export interface PdfAssets {
  /** Template text by file name; `sheet.typ` is the main one. */
  templates: ReadonlyMap<string, string>;
  fonts: PdfFonts;
}

export interface PdfFonts {
  regular: Uint8Array;
  bold: Uint8Array;
  /** Symbols that the text family lacks, in one weight. */
  symbols: Uint8Array;
}

const templateNames = ['sheet.typ', 'parts.typ', 'front.typ', 'steps.typ', 'torque.typ', 'work.typ', 'back.typ'];

const packagedAt: Readonly<Record<string, string>> = {
  'NotoSans_400Regular.ttf': '@expo-google-fonts/noto-sans/400Regular',
  'NotoSans_700Bold.ttf': '@expo-google-fonts/noto-sans/700Bold',
  'DejaVuSans.ttf': 'dejavu-fonts-ttf/ttf',
  'typst_ts_web_compiler_bg.wasm': '@myriaddreamin/typst-ts-web-compiler/pkg',
};

let remembered: PdfAssets | undefined;

export function readPdfAssets(): PdfAssets {
  remembered ??= {
    templates: new Map(templateNames.map((name) => [name, readAsset(name).toString('utf8')])),
    fonts: {
      regular: readAsset('NotoSans_400Regular.ttf'),
      bold: readAsset('NotoSans_700Bold.ttf'),
      symbols: readAsset('DejaVuSans.ttf'),
    },
  };
  return remembered;
}

/** The engine as WebAssembly, 28 MB; read only where it is used. */
export function readEngineWasm(): Buffer {
  return readAsset('typst_ts_web_compiler_bg.wasm');
}

function readAsset(name: string): Buffer {
  return readFileSync(assetPath(name));
}

// A bundle has its assets in a folder beside it; from source they are still where their packages put them.
function assetPath(name: string): string {
  const bundled = join(__dirname, 'assets', name);
  if (existsSync(bundled)) return bundled;
  const folder = packagedAt[name];
  return folder === undefined ? join(__dirname, name) : join(__dirname, '../../../../node_modules', folder, name);
}
