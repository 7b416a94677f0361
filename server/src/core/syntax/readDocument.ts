import type { Span } from '../text/span';
import { composeRoot } from './composeRoot';
import { CUT_PLANS } from './cutPlan';
import { type Disarmed, disarm } from './disarm';
import type { DocumentKind } from './documentKind';
import { linesOf } from './lines';
import type { Item, ItemRange, MapNode, Node, SyntaxProblem } from './node';
import { spanFrom } from './node';
import type { ReadingMemo } from './readingMemo';
import { split } from './split';

/** A document as read: its tree, and where each of its items stands. */
export interface SyntaxDocument {
  readonly uri: string;
  readonly kind: DocumentKind;
  readonly text: string;
  /** The document as one map, put together from its items; undefined where it is something else or empty. */
  readonly root: MapNode | undefined;
  /** What the document is where it is no map. */
  readonly other: Node | undefined;
  readonly problems: readonly SyntaxProblem[];
  readonly items: readonly Item[];
  spanOf(range: ItemRange): Span;
  /** Whether the item is one of this reading, so that ranges within it have a place. */
  holds(item: Item): boolean;
  /** The item that holds an offset, and the offset within it. */
  itemAt(offset: number): { readonly item: Item; readonly offset: number } | undefined;
}

/** Reads a document. The result depends on the text alone; the memo only saves reading the same item twice. */
export function readDocument(uri: string, kind: DocumentKind, text: string, memo: ReadingMemo): SyntaxDocument {
  const start = text.charCodeAt(0) === 0xfeff ? 1 : 0;
  const safe = disarm(text, linesOf(text, start));
  const pieces = split(safe.text, safe.lines, CUT_PLANS[kind]);
  const reader = memo.startReading();
  const composed = composeRoot(safe, pieces, (itemText) => reader.read(itemText));
  reader.finish();
  const places = new Places(composed.bases);
  const markers = markerProblems(safe);
  for (const [i, item] of markers.items.entries()) places.add(item, markers.bases[i] ?? 0);
  const problems = [...markers.problems, ...composed.problems, ...composed.items.flatMap((item) => item.problems)];
  return {
    uri,
    kind,
    text,
    root: composed.root,
    other: composed.other,
    problems,
    items: composed.items,
    spanOf: (range) => spanFrom(places.baseOf(range.item), range),
    holds: (item) => places.holds(item),
    itemAt: (offset) => places.itemAt(offset),
  };
}

/** Each disarmed line becomes an item of its own, so that its problem has a place. */
function markerProblems(safe: Disarmed): { problems: SyntaxProblem[]; items: Item[]; bases: number[] } {
  const problems: SyntaxProblem[] = [];
  const items: Item[] = [];
  const bases: number[] = [];
  for (const { line, what } of safe.disarmed) {
    if (what === 'start-marker') continue;
    const item: Item = { text: safe.text.slice(line.start, line.end), root: undefined, problems: [] };
    const range = { item, from: 0, to: item.text.length };
    items.push(item);
    bases.push(line.start);
    problems.push(what === 'conflict-marker' ? { kind: what, range } : { kind: 'not-plain', range, what });
  }
  return { problems, items, bases };
}

class Places {
  readonly #bases: Map<Item, number>;

  constructor(bases: ReadonlyMap<Item, number>) {
    this.#bases = new Map(bases);
  }

  add(item: Item, base: number): void {
    this.#bases.set(item, base);
  }

  holds(item: Item): boolean {
    return this.#bases.has(item);
  }

  baseOf(item: Item): number {
    return this.#bases.get(item) ?? 0;
  }

  itemAt(offset: number): { item: Item; offset: number } | undefined {
    for (const [item, base] of this.#bases) {
      if (offset >= base && offset <= base + item.text.length) return { item, offset: offset - base };
    }
    return undefined;
  }
}
