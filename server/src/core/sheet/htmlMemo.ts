import type { Html, HtmlContext } from './htmlText';

/**
 * Markup that was printed lately, by what it was printed from. A preview is printed at every key, and nearly all of it
 * stays the same. The key is the whole content, so that nothing remembered can be out of date.
 */
let recent = new Map<string, Html>();
let older = new Map<string, Html>();

/** Pieces of one generation; two are kept. A sheet of 300 steps takes about so many hundred. */
const MOST_PIECES = 1500;

/**
 * The markup of a value that it alone decides, beside the language and the mode. `make` must look at nothing else.
 */
export function remembered<Value>(what: string, value: Value, { sheet, options }: HtmlContext, make: () => Html): Html {
  // Where pictures come from is known to the caller alone.
  if (options.figureUrl !== undefined) return make();
  const key = `${what} ${sheet.language} ${options.mode} ${JSON.stringify(value)}`;
  const known = recent.get(key) ?? older.get(key);
  const markup = known ?? make();
  if (known === undefined || !recent.has(key)) keep(key, markup);
  return markup;
}

function keep(key: string, markup: Html): void {
  if (recent.size >= MOST_PIECES) {
    older = recent;
    recent = new Map();
  }
  recent.set(key, markup);
}
