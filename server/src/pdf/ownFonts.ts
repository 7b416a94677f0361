import type { PdfFonts } from './assets';

/**
 * The families by which the templates and the drawings ask for our fonts. No other font is called so: the engine, where
 * it runs natively, also looks among the machine's fonts, and would take one of the same family for a style we lack.
 */
export const ownFamilies = { text: 'SheetSans', symbols: 'SheetSymbol' } as const;

/** What the font files call their families; each is as long as ours, so that nothing in the file has to move. */
const publishedFamilies = { text: 'Noto Sans', symbols: 'DejaVu Sans' } as const;

/** The fonts under our family names, as both forms of the engine are given them. */
export function ownFonts({ regular, bold, boldItalic, symbols }: PdfFonts): Uint8Array[] {
  const text = [regular, bold, boldItalic].map((font) => renamed(font, publishedFamilies.text, ownFamilies.text));
  return [...text, renamed(symbols, publishedFamilies.symbols, ownFamilies.symbols)];
}

/** A copy of a font whose `name` table (OpenType 1.9) has one family for another. */
function renamed(font: Uint8Array, published: string, own: string): Uint8Array {
  const copy = font.slice();
  const table = nameTable(copy);
  for (const encode of [utf16, latin]) {
    const [from, to] = [encode(published), encode(own)];
    for (let at = 0; at + from.length <= table.length; at += 1) {
      if (from.every((byte, index) => table[at + index] === byte)) table.set(to, at);
    }
  }
  return copy;
}

function nameTable(font: Uint8Array): Uint8Array {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const record = 12 + 16 * index;
    if (view.getUint32(record) !== 0x6e616d65) continue;
    const start = view.getUint32(record + 8);
    return font.subarray(start, start + view.getUint32(record + 12));
  }
  return font.subarray(0, 0);
}

const latin = (text: string): number[] => [...text].map((character) => character.charCodeAt(0));
const utf16 = (text: string): number[] => latin(text).flatMap((code) => [0, code]);
