import type { Sheet, SheetFigure } from '../core/sheet/sheet';
import type { PlacedText } from './fontCoverage';
import { ownFamilies } from './ownFonts';
import { depthOf, drawingFault, type PictureFault, pictureFault } from './pictureFaults';

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
  texts: PlacedText[];
  /** The first figure that cannot be printed. */
  fault: { figure: string; fault: PictureFault } | undefined;
}

/** Takes the pictures out of the sheet and gives each a file of its own. */
export function placeFigures(sheet: Sheet, given: FigureFiles): PlacedFigures {
  const files = new Map<string, Uint8Array>();
  const texts: PlacedText[] = [];
  let fault: PlacedFigures['fault'];
  const place = (figure: SheetFigure): PlacedFigure => {
    const { image, ...words } = figure;
    const path = `figures/${files.size}.${image.kind === 'svg' ? 'svg' : image.mediaType.slice(6)}`;
    const found = faultOf(figure, given);
    if (found !== undefined) fault ??= { figure: figure.id, fault: found };
    if (found !== undefined) return { ...words, path: null };
    if (image.kind === 'svg') texts.push({ text: svgText(image.svg), place: `figure ${figure.id}` });
    const bytes = image.kind === 'svg' ? new TextEncoder().encode(printableSvg(image.svg)) : given.get(image.name);
    if (bytes !== undefined) files.set(path, bytes);
    return { ...words, path: bytes === undefined ? null : path };
  };
  const replaced = replaceFigures(sheet, place);
  return { sheet: replaced, files, texts, fault };
}

/** A figure whose picture is missing prints its words, whatever they are. */
function faultOf({ id, alt, image }: SheetFigure, given: FigureFiles): PictureFault | undefined {
  const bytes = image.kind === 'svg' ? undefined : given.get(image.name);
  if (image.kind !== 'svg' && bytes === undefined) return undefined;
  if (alt.trim() === '' || alt === id) return { kind: 'noText' };
  return image.kind === 'svg' ? drawingFault(image.svg) : bytes && pictureFault(bytes);
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
  // What is torn is left to the engine, which says what is wrong with it.
  if (depthOf(svg) === undefined) return svg;
  const withoutFamilies = replaceElements(svg, 'style', (sheet) =>
    sheet.replace(/font-family\s*:(?:"[^"]*"|'[^']*'|[^;"'}])*;?/gu, ''),
  )
    .replace(/\sfont-family\s*=\s*("[^"]*"|'[^']*')/gu, '')
    .replace(/font-family\s*:[^;"'}<]*('[^'<]*'|&quot;)?[^;"'}<]*;?/gu, '');
  const namespace = /<svg[^>]*\sxmlns\s*=/u.test(svg) ? '' : ' xmlns="http://www.w3.org/2000/svg"';
  return withoutFamilies.replace('<svg', `<svg${namespace} font-family="${ownFamilies.text}, ${ownFamilies.symbols}"`);
}

function svgText(svg: string): string {
  if (depthOf(svg) === undefined) return '';
  const shown = ['style', 'desc', 'title', 'metadata'].reduce(
    (rest, name) => replaceElements(rest, name, () => ''),
    svg,
  );
  const content = shown.replace(/<[^>]*>/gu, '');
  return content.replace(/&#(x?)([0-9a-f]+);/giu, decodeReference).replace(/\s+/gu, ' ');
}

/** Each element of a name, with what is in it; looks at each character once, however the drawing is torn. */
function replaceElements(svg: string, name: string, replacement: (element: string) => string): string {
  const [start, stop] = [`<${name}`, `</${name}>`];
  let replaced = '';
  let at = 0;
  for (let from = svg.indexOf(start); from >= 0; from = svg.indexOf(start, at)) {
    const end = svg.indexOf(stop, from);
    if (end < 0) break;
    replaced += svg.slice(at, from) + replacement(svg.slice(from, end + stop.length));
    at = end + stop.length;
  }
  return replaced + svg.slice(at);
}

function decodeReference(_all: string, hex: string, digits: string): string {
  const point = Number.parseInt(digits, hex === '' ? 10 : 16);
  return point <= 0x10ffff ? String.fromCodePoint(point) : '\uFFFD';
}
