import type { Sheet, SheetFigure } from '../core/sheet/sheet';
import { ownFamilies } from './ownFonts';

/** Pictures that are files, by the name that the sheet gives them. */
export type FigureFiles = ReadonlyMap<string, Uint8Array>;

/** A figure as the template reads it: where its picture lies, or null where there is none and its words stand in. */
export interface PlacedFigure {
  id: string;
  alt: string;
  caption?: string;
  path: string | null;
}

export interface PlacedFigures {
  /** The sheet with each figure's picture replaced by its path. */
  sheet: Sheet;
  files: Map<string, Uint8Array>;
  /** Words inside the drawings; they need glyphs like any others. */
  texts: string[];
}

/** Takes the pictures out of the sheet and gives each a file of its own. */
export function placeFigures(sheet: Sheet, given: FigureFiles): PlacedFigures {
  const files = new Map<string, Uint8Array>();
  const texts: string[] = [];
  const place = (figure: SheetFigure): PlacedFigure => {
    const { image, ...words } = figure;
    const path = `figures/${files.size}.${image.kind === 'svg' ? 'svg' : image.mediaType.slice(6)}`;
    if (image.kind === 'svg') texts.push(...svgTexts(image.svg));
    const bytes = image.kind === 'svg' ? new TextEncoder().encode(printableSvg(image.svg)) : given.get(image.name);
    if (bytes !== undefined) files.set(path, bytes);
    return { ...words, path: bytes === undefined ? null : path };
  };
  return { sheet: replaceFigures(sheet, place), files, texts };
}

// A figure is the one kind of object with an image, wherever in the tree it stands.
function replaceFigures<T>(value: T, place: (figure: SheetFigure) => PlacedFigure): T {
  if (Array.isArray(value)) return value.map((entry) => replaceFigures(entry, place)) as T;
  if (typeof value !== 'object' || value === null) return value;
  if ('image' in value && 'alt' in value) return place(value as unknown as SheetFigure) as T;
  return Object.fromEntries(Object.entries(value).map(([key, entry]) => [key, replaceFigures(entry, place)])) as T;
}

/**
 * A drawing that prints the same everywhere: all its words in the sheet's own fonts, since a family that is not
 * loaded prints nothing.
 */
export function printableSvg(svg: string): string {
  const withoutFamilies = svg
    .replace(/<style\b[\s\S]*?<\/style>/gu, (sheet) =>
      sheet.replace(/font-family\s*:(?:"[^"]*"|'[^']*'|[^;"'}])*;?/gu, ''),
    )
    .replace(/\sfont-family\s*=\s*("[^"]*"|'[^']*')/gu, '')
    .replace(/font-family\s*:[^;"'}<]*('[^'<]*'|&quot;)?[^;"'}<]*;?/gu, '');
  const namespace = /<svg[^>]*\sxmlns\s*=/u.test(svg) ? '' : ' xmlns="http://www.w3.org/2000/svg"';
  return withoutFamilies.replace('<svg', `<svg${namespace} font-family="${ownFamilies.text}, ${ownFamilies.symbols}"`);
}

function svgTexts(svg: string): string[] {
  const content = svg.replace(/<(style|desc|title|metadata)\b[\s\S]*?<\/\1>/gu, '').replace(/<[^>]*>/gu, '');
  return [content.replace(/&#(x?)([0-9a-f]+);/giu, decodeReference).replace(/\s+/gu, ' ')];
}

function decodeReference(_all: string, hex: string, digits: string): string {
  const point = Number.parseInt(digits, hex === '' ? 10 : 16);
  return point <= 0x10ffff ? String.fromCodePoint(point) : '\uFFFD';
}
