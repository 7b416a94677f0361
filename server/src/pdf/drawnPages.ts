/** One printed page as a drawing that needs nothing beside it. Sizes are in points. */
export interface DrawnPage {
  readonly svg: string;
  readonly width: number;
  readonly height: number;
}

/** Where a step begins on the printed pages: its number, its page counted from 1, and how far down, in points. */
export interface StepOnPage {
  readonly number: number;
  readonly page: number;
  readonly y: number;
}

export interface DrawnSheet {
  readonly pages: readonly DrawnPage[];
  readonly steps: readonly StepOnPage[];
}

/** What the template says where its steps begin, under the label that the engine is asked for. */
export const stepPlaces = { selector: '<step-places>', field: 'value' };

/** From the engine's drawing of all pages, one below the other, and from what it was asked of the steps. */
export function drawnSheet(svg: string, places: unknown): DrawnSheet {
  return { pages: drawnPages(svg), steps: (places as [StepOnPage[]?])[0] ?? [] };
}

const PAGE =
  /<g class="typst-page" transform="translate\(0, ([\d.]+)\)"[^>]*data-page-width="([\d.]+)" data-page-height="([\d.]+)">/g;
const USE = /<use [^>]*?href="#([^"]+)"[^>]*?\/>/g;
const NAMES =
  'xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:h5="http://www.w3.org/1999/xhtml"';

function drawnPages(svg: string): DrawnPage[] {
  const starts = [...svg.matchAll(PAGE)];
  const before = svg.slice(0, starts[0]?.index ?? 0);
  const glyphs = new Map(
    [...before.matchAll(/<(?:path|symbol|image) id="([^"]+)"[^>]*?(?:\/>|>.*?<\/symbol>)/gs)].map(([whole, id]) => [
      id ?? '',
      whole,
    ]),
  );
  const shared = [...before.matchAll(/<defs class="(?!glyph)[^"]*">.*?<\/defs>/gs)].map(([whole]) => whole).join('');
  return starts.map((start, at) => {
    const [, y = '0', width = '0', height = '0'] = start;
    const end = starts[at + 1]?.index ?? svg.lastIndexOf('</svg>');
    const used = new Set<string>();
    // A space is a letter without an outline.
    const body = drawingOnly(svg.slice(start.index, end)).replace(USE, (use, id: string) => {
      if (glyphs.has(id)) used.add(id);
      return glyphs.has(id) ? use : '';
    });
    const outlines = [...used].map((id) => glyphs.get(id) ?? '').join('');
    const view = `viewBox="0 ${y} ${width} ${height}" width="${width}" height="${height}"`;
    return {
      svg: `<svg ${NAMES} ${view}><defs>${outlines}</defs>${shared}${body}</svg>`,
      width: Number(width),
      height: Number(height),
    };
  });
}

/** Without the words that lie over the drawing to be selected, and without anything that could run. */
function drawingOnly(markup: string): string {
  return markup
    .replace(/<foreignObject.*?<\/foreignObject>/gs, '')
    .replace(/<script.*?<\/script>/gs, '')
    .replace(/ (?:onclick|data-tid|data-hint)="[^"]*"/g, '');
}
