import { documentValue } from '../analysis/documentUnit';
import { fileNameOf, type Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { outlineOf } from './outline';
import type { OutlineEntry, OutlineKind } from './outlineEntry';

/** Something that one can look for in all documents at once. */
export interface WorkspaceSymbol {
  readonly uri: Uri;
  readonly kind: OutlineKind | 'document';
  readonly id: string;
  readonly name: string;
  /** Where it belongs: its document, and the phase of a step. */
  readonly container: string;
  readonly span: Span;
}

/** What can be found in a document: the document itself, and everything in it that has an id or a number. */
export function symbolsOf(document: SyntaxDocument): readonly WorkspaceSymbol[] {
  const { uri } = document;
  const { id, name } = titleOf(document);
  const title = id === name ? id : `${id} ${name}`.trim();
  const start = { start: 0, end: 0 };
  const own: WorkspaceSymbol = { uri, kind: 'document', id, name, container: fileNameOf(uri), span: start };
  return [own, ...outlineOf(document).flatMap((entry) => below(uri, entry, title))];
}

function below(uri: Uri, { kind, label, symbol, labelSpan, children }: OutlineEntry, container: string) {
  const own = symbol === undefined ? [] : [{ uri, kind, ...symbol, container, span: labelSpan }];
  const inner = kind === 'phase' ? `${container}, ${label}` : container;
  const found: WorkspaceSymbol[] = [...own, ...children.flatMap((child) => below(uri, child, inner))];
  return found;
}

/** The number or id of a document, and what it is called; its file's name where it says neither. */
function titleOf(document: SyntaxDocument): { id: string; name: string } {
  const procedure = documentValue(document, 'procedure');
  const family = documentValue(document, 'family');
  const kit = documentValue(document, 'kit');
  const stores = documentValue(document, 'stores');
  const id = procedure?.procedure?.text ?? family?.family?.id ?? kit?.kit?.text ?? stores?.stores?.text;
  const name = procedure?.title?.text ?? family?.name?.text ?? kit?.name?.text;
  const file = fileNameOf(document.uri);
  return { id: id ?? file, name: name ?? id ?? file };
}

/** How a list shows a symbol; both id and name, since an editor looks for what was typed in this text alone. */
export function symbolLabel({ id, name }: WorkspaceSymbol): string {
  return plain(id) === plain(name) ? id : `${id} – ${name}`;
}

/** The symbols that a query may mean, the likeliest first: all its words have to be found in the id or in the name. */
export function findSymbols<Found extends WorkspaceSymbol>(
  symbols: Iterable<Found>,
  query: string,
  most: number,
): Found[] {
  const words = plain(query)
    .split(' ')
    .filter((word) => word !== '');
  const scored: { symbol: Found; score: number }[] = [];
  for (const symbol of symbols) {
    const score = Math.max(scoreIn(plain(symbol.id), words), scoreIn(plain(symbol.name), words) - 1);
    if (score > 0 || words.length === 0) scored.push({ symbol, score });
  }
  scored.sort((a, b) => b.score - a.score || compare(a.symbol.id, b.symbol.id) || compare(a.symbol.uri, b.symbol.uri));
  return scored.slice(0, most).map(({ symbol }) => symbol);
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** Hyphens, points and spaces are alike to whoever looks for something. */
function plain(text: string): string {
  return text
    .toLowerCase()
    .replace(/[\s\-_./]+/g, ' ')
    .trim();
}

function scoreIn(text: string, words: readonly string[]): number {
  const scores = words.map((word) => scoreOfWord(text, word));
  if (scores.includes(0)) return 0;
  const isWhole = text === words.join(' ');
  return scores.reduce((sum, score) => sum + score, isWhole ? 200 : 0) - Math.min(text.length, 50) / 100;
}

/** At the start of the text, at the start of a word, within one, or only its letters in this order. */
function scoreOfWord(text: string, word: string): number {
  if (text.startsWith(word)) return 100;
  if (text.includes(` ${word}`)) return 80;
  if (text.includes(word)) return 60;
  return hasLetters(text, word) ? 20 : 0;
}

function hasLetters(text: string, word: string): boolean {
  let at = -1;
  for (const letter of word) {
    at = text.indexOf(letter, at + 1);
    if (at < 0) return false;
  }
  return true;
}
