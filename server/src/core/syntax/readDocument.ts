import { DocumentText } from '../text/documentText';
import type { Span } from '../text/span';
import { composeRoot } from './composeRoot';
import { CUT_PLANS } from './cutPlan';
import { type Disarmed, disarm } from './disarm';
import type { DocumentKind } from './documentKind';
import { ItemReader } from './itemReader';
import type { Item, ItemRange, MapNode, Node, SyntaxProblem } from './node';
import { spanFrom } from './node';
import { Places } from './places';
import type { Reading, ReadingMemo } from './readingMemo';
import { split } from './split';

/** A document as read: its tree, and where each of its items stands. */
export interface SyntaxDocument {
  readonly uri: string;
  readonly kind: DocumentKind;
  /** Its text in pieces. Whoever needs a stretch of it, or its lines, takes them from here. */
  readonly content: DocumentText;
  /** Its text as one string; a long one is put together when somebody asks for it, which nothing does for each key. */
  readonly text: string;
  /** The document as one map, put together from its items; undefined where it is something else or empty. */
  readonly root: MapNode | undefined;
  /** What the document is where it is no map. */
  readonly other: Node | undefined;
  readonly problems: readonly SyntaxProblem[];
  readonly items: readonly Item[];
  /** What another text of this document can be read from. */
  readonly reading: Reading;
  spanOf(range: ItemRange): Span;
  /** Whether the item is one of this reading, so that ranges within it have a place. */
  holds(item: Item): boolean;
  /** The item that holds an offset, and the offset within it. */
  itemAt(offset: number): { readonly item: Item; readonly offset: number } | undefined;
}

/** Reads a document. The result depends on the text alone; the memo only saves reading again what did not change. */
export function readDocument(
  uri: string,
  kind: DocumentKind,
  text: string | DocumentText,
  memo: ReadingMemo,
): SyntaxDocument {
  const content = typeof text === 'string' ? DocumentText.of(text) : text;
  const { lines, source } = memo.startReading(content);
  const safe = disarm(content, lines);
  const reader = new ItemReader(safe.text, lines, source);
  const { root, other, problems: misplaced } = composeRoot(split(safe.text, lines, CUT_PLANS[kind]), reader);
  const { items, firsts, ends } = reader;
  const reading: Reading = { text: content, lines, items, firsts, ends };
  memo.finishReading(reading);
  const markers = markerProblems(safe);
  const places = new Places(items, firsts, lines.starts, markers);
  const problems = [...markers.problems, ...misplaced];
  for (const item of items) if (item.problems.length > 0) problems.push(...item.problems);
  return {
    uri,
    kind,
    content,
    get text() {
      return content.whole;
    },
    root,
    other,
    problems,
    items,
    reading,
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
  for (const { start, end, what } of safe.disarmed) {
    if (what === 'start-marker') continue;
    const item: Item = { text: safe.text.slice(start, end), root: undefined, problems: [] };
    const range = { item, from: 0, to: item.text.length };
    items.push(item);
    bases.push(start);
    problems.push(what === 'conflict-marker' ? { kind: what, range } : { kind: 'not-plain', range, what });
  }
  return { problems, items, bases };
}
