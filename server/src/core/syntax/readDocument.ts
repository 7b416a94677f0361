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
  const markers = markerProblems(safe);
  const places = new Places([...composed.items, ...markers.items], [...composed.bases, ...markers.bases]);
  const problems = [...markers.problems, ...composed.problems];
  for (const item of composed.items) if (item.problems.length > 0) problems.push(...item.problems);
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

/** Where each item stands. Most readings are asked for few places, if any, so items are found on demand. */
class Places {
  #byItem: Map<Item, number> | undefined;

  constructor(
    readonly items: readonly Item[],
    readonly bases: readonly number[],
  ) {}

  holds(item: Item): boolean {
    return this.#bases.has(item);
  }

  baseOf(item: Item): number {
    return this.#bases.get(item) ?? 0;
  }

  itemAt(offset: number): { item: Item; offset: number } | undefined {
    for (const [i, item] of this.items.entries()) {
      const base = this.bases[i] ?? 0;
      if (offset >= base && offset <= base + item.text.length) return { item, offset: offset - base };
    }
    return undefined;
  }

  get #bases(): ReadonlyMap<Item, number> {
    this.#byItem ??= new Map(this.items.map((one, i) => [one, this.bases[i] ?? 0]));
    return this.#byItem;
  }
}
