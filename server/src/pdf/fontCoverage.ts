import type { PdfFonts } from './assets';
import type { MissingGlyph } from './problem';

type Covers = (point: number) => boolean;

/**
 * Which code points a TrueType font has a glyph for, read from its `cmap` table (OpenType 1.9, formats 4 and 12,
 * which between them hold all of Unicode in the fonts we ship).
 */
export function readCoverage(font: Uint8Array): Covers {
  const view = new DataView(font.buffer, font.byteOffset, font.byteLength);
  const cmap = tableOffset(view, 'cmap');
  if (cmap === undefined) return () => false;
  const ranges: [number, number][] = [];
  for (let index = 0; index < view.getUint16(cmap + 2); index += 1) {
    const subtable = cmap + view.getUint32(cmap + 4 + 8 * index + 4);
    const format = view.getUint16(subtable);
    if (format === 12) ranges.push(...segmentsOfFormat12(view, subtable));
    if (format === 4) ranges.push(...segmentsOfFormat4(view, subtable));
  }
  return (point) => ranges.some(([first, last]) => point >= first && point <= last);
}

function tableOffset(view: DataView, wanted: string): number | undefined {
  for (let index = 0; index < view.getUint16(4); index += 1) {
    const record = 12 + 16 * index;
    const tag = String.fromCharCode(...[0, 1, 2, 3].map((at) => view.getUint8(record + at)));
    if (tag === wanted) return view.getUint32(record + 8);
  }
  return undefined;
}

function segmentsOfFormat12(view: DataView, at: number): [number, number][] {
  return Array.from({ length: view.getUint32(at + 12) }, (_, group) => {
    const record = at + 16 + 12 * group;
    return [view.getUint32(record), view.getUint32(record + 4)];
  });
}

function segmentsOfFormat4(view: DataView, at: number): [number, number][] {
  const doubled = view.getUint16(at + 6);
  const segments: [number, number][] = [];
  for (let segment = 0; segment < doubled; segment += 2) {
    const last = view.getUint16(at + 14 + segment);
    const first = view.getUint16(at + 16 + doubled + segment);
    // The table ends with a segment that stands for no character.
    if (first !== 0xffff) segments.push([first, last]);
  }
  return segments;
}

// Characters that leave no mark by definition: soft hyphen, zero-width space, variation selectors.
const leavesNoMark = /^\p{Default_Ignorable_Code_Point}$/u;

const knownFonts = new WeakMap<PdfFonts, Covers>();

// A character may stand in bold anywhere, so the text family counts only where both its weights have the glyph.
function coverageOf(fonts: PdfFonts): Covers {
  const known = knownFonts.get(fonts);
  if (known !== undefined) return known;
  const [regular, bold, symbols] = [fonts.regular, fonts.bold, fonts.symbols].map(readCoverage) as [
    Covers,
    Covers,
    Covers,
  ];
  const covers: Covers = (point) => (regular(point) && bold(point)) || symbols(point);
  knownFonts.set(fonts, covers);
  return covers;
}

/** A text with where on the sheet it stands, for example `step 4`. */
export interface PlacedText {
  text: string;
  place: string;
}

/** The characters of `texts` that would print as nothing, each once where it first stands, in order of appearance. */
export function missingGlyphs(texts: Iterable<PlacedText>, fonts: PdfFonts): MissingGlyph[] {
  const covers = coverageOf(fonts);
  const places = new Map<string, string>();
  for (const { text, place } of texts) {
    for (const character of text) if (!places.has(character)) places.set(character, place);
  }
  const missing = [...places].filter(([each]) => !leavesNoMark.test(each) && !covers(each.codePointAt(0) ?? 0));
  return missing.map(([character, place]) => ({ character, place }));
}
