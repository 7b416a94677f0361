/** What the typesetting engine needs beside the sheet, wherever it runs. */
export interface PdfAssets {
  /** Template text by file name; `sheet.typ` is the main one. */
  templates: ReadonlyMap<string, string>;
  fonts: PdfFonts;
}

export interface PdfFonts {
  regular: Uint8Array;
  bold: Uint8Array;
  /** For the one word that its standard sets in italics. */
  boldItalic: Uint8Array;
  /** Symbols that the text family lacks, in one weight. */
  symbols: Uint8Array;
}

export const templateNames = [
  'changes.typ',
  'sheet.typ',
  'parts.typ',
  'front.typ',
  'form.typ',
  'torqueTable.typ',
  'steps.typ',
  'holdPoint.typ',
  'particulars.typ',
  'pieces.typ',
  'readings.typ',
  'torque.typ',
  'turns.typ',
  'work.typ',
  'back.typ',
  'proof.typ',
];

export const fontNames = {
  regular: 'NotoSans_400Regular.ttf',
  bold: 'NotoSans_700Bold.ttf',
  boldItalic: 'NotoSans_700Bold_Italic.ttf',
  symbols: 'DejaVuSans.ttf',
} as const satisfies Record<keyof PdfFonts, string>;

/** What draws the engine's pages, as WebAssembly, 1 MB. */
export const drawingName = 'typst_ts_renderer_bg.wasm';

/** The engine as WebAssembly, 28 MB; read only where it is used. */
export const engineName = 'typst_ts_web_compiler_bg.wasm';
