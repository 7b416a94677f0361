import type { Prose, Run, SheetLanguage } from '../sheet';

/** Something that a sentence names. How it is written, with article and number, is the grammar's business. */
export interface Thing {
  readonly kind: 'part' | 'tool' | 'consumable' | 'value';
  /** The name as declared, singular and without an article; the id where nothing declares it. */
  readonly name: string;
  /** The name as its document writes it, where that says more: `die Nuss, die Nüsse`. */
  readonly entry?: string;
  /** How many pieces are meant; undefined where that differs or is not known. */
  readonly count: number | undefined;
  /** What sort of part, tool or consumable it is, as its document says. */
  readonly sort: string | undefined;
  /** The language that the name is in, where it is not that of the sheet. Such a name is never inflected. */
  readonly language?: SheetLanguage;
}

/** How one language puts words together. Everything gives runs, so that printers still know what each word means. */
export interface Grammar {
  /** The name alone out of an entry with article and plural, as for a list: `die Nuss, die Nüsse` gives `Nuss`. */
  nameIn(entry: string): string;
  /** As a sentence names it, in the number that is meant: `the four seal plate screws`. */
  the(thing: Thing): Prose;
  /** The same, as a part out of the kit: `the new compressor nut`. */
  theNew(thing: Thing): Prose;
  /** Some pieces of several: `two of the seal plate screws`. */
  someOf(count: number, thing: Thing): Prose;
  /** Without an article, as stuff is named: `assembly oil`. */
  bare(thing: Thing): Prose;
  /** `a, b and c`. */
  and(items: readonly Prose[]): Prose;
  /** `a, b or c`. */
  or(items: readonly Prose[]): Prose;
  /** A phrase of the writer with an article before it where it has none: `thread` to `the thread`. */
  withArticle(phrase: Prose): Prose;
  /** The pronoun for things named before: `it` or `them`. */
  pronoun(things: readonly Thing[]): string;
  /** One of it within words of the writer, as what stands before it asks: `the compressor nut` behind `Pull `. */
  mention(thing: Thing, wordsBefore: string): Prose;
  /** A line of the writer as an item of a list within a sentence: `eye protection`. */
  asItem(written: string): string;
  /** A list of numbers or short names: `1, 3, 2, 4`. */
  series(items: readonly string[]): string;
  /** Draws words together that run into one where they meet: `de el eje` to `del eje`. Absent where none do. */
  readonly contract?: (prose: Prose) => Prose;
}

/** What a sentence is put together from. */
export type Piece = string | Run | Prose | undefined | false;

export const text = (words: string): Run => ({ kind: 'text', text: words });
export const strong = (words: string): Run => ({ kind: 'strong', text: words });
export const quantity = (words: string): Run => ({ kind: 'quantity', text: words });

/** The name of a thing as a run, which knows what it names and in which other language it may be. */
export function nameRun({ kind, language }: Pick<Thing, 'kind' | 'language'>, words: string): Run {
  const run: Run = kind === 'value' ? text(words) : { kind, text: words };
  return language === undefined ? run : { ...run, lang: language };
}

/** Joins pieces as they stand; neighbours of one plain kind become one run. */
export function join(...pieces: readonly Piece[]): Prose {
  const runs: Prose = [];
  for (const piece of pieces) {
    if (piece === undefined || piece === false || piece === '') continue;
    if (typeof piece === 'string') append(runs, text(piece));
    else if (!Array.isArray(piece)) append(runs, piece as Run);
    else for (const run of piece) append(runs, run);
  }
  return runs;
}

function append(runs: Prose, run: Run): void {
  const last = runs.at(-1);
  if (last?.kind === 'text' && run.kind === 'text' && last.lang === run.lang)
    runs[runs.length - 1] = { ...last, text: last.text + run.text };
  else if (run.text !== '') runs.push(run);
}

/** Sentences one after the other, with a space between; what is empty is left out. */
export function sentences(...all: readonly Piece[]): Prose {
  const present = all.map((one) => join(one)).filter((one) => one.length > 0);
  return join(...present.flatMap((one, place) => (place === 0 ? [one] : [' ', one])));
}

/** The text alone, for labels and tables. */
export function plain(prose: Prose): string {
  return prose.map((run) => run.text).join('');
}

/** The first letter made a capital, as at the start of a sentence or in a label. */
export function capital(words: string): string {
  return words.slice(0, 1).toUpperCase() + words.slice(1);
}

/** The same for a sentence of runs. */
export function capitalised(prose: Prose): Prose {
  const [first, ...rest] = prose;
  return first === undefined ? [] : [{ ...first, text: capital(first.text) }, ...rest];
}

/** Closes a sentence, unless the writer has. */
export function closed(prose: Prose): Prose {
  return prose.length === 0 || /[.!?:;…]\s*$/u.test(plain(prose)) ? prose : join(prose, '.');
}
