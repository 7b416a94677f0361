import type { Span } from '../text/span';

/**
 * One stretch of a document that is read alone. It stays the same object while its text stays the same, however much
 * changes above it; that is why everything below keeps offsets within the item, and only the document knows where
 * the item stands.
 */
export interface Item {
  readonly text: string;
  readonly root: Node | undefined;
  readonly problems: readonly SyntaxProblem[];
}

/** A stretch of an item's text: UTF-16 offsets within the item, `to` exclusive. */
export interface ItemRange {
  readonly item: Item;
  readonly from: number;
  readonly to: number;
}

export type ScalarStyle = 'plain' | 'single' | 'double' | 'literal' | 'folded';

/**
 * What later layers remember of a node. It is a field of the node and not a weak map beside it, since a weak map with an
 * entry for every instruction of every document costs the garbage collector more than reading the document.
 */
export interface Remembering {
  remembered: unknown;
}

/** A scalar; `text` is its source text as a string, whatever it looks like. */
export interface ScalarNode extends ItemRange, Remembering {
  readonly kind: 'scalar';
  readonly style: ScalarStyle;
  readonly text: string;
}

export interface ListNode extends ItemRange, Remembering {
  readonly kind: 'list';
  readonly flow: boolean;
  readonly items: readonly Node[];
}

export interface MapNode extends ItemRange, Remembering {
  readonly kind: 'map';
  readonly flow: boolean;
  readonly pairs: readonly Pair[];
}

/** A key with no value at all (`title:`) has no `value`. */
export interface Pair {
  readonly key: ScalarNode;
  readonly value: Node | undefined;
}

export type Node = ScalarNode | ListNode | MapNode;

/** What is wrong with the text itself. */
export type SyntaxProblem =
  | { readonly kind: 'broken'; readonly range: ItemRange; readonly message: string }
  | { readonly kind: 'conflict-marker'; readonly range: ItemRange }
  | { readonly kind: 'not-plain'; readonly range: ItemRange; readonly what: NotPlain }
  | { readonly kind: 'duplicate-key'; readonly range: ItemRange; readonly key: string }
  | { readonly kind: 'text-lost'; readonly range: ItemRange; readonly lost: string };

export type NotPlain =
  | 'anchor'
  | 'alias'
  | 'tag'
  | 'merge-key'
  | 'explicit-key'
  | 'directive'
  | 'second-document'
  | 'key-not-text';

/** The pair of a map by its key; the first one where the key stands twice. */
export function pairOf(map: MapNode, key: string): Pair | undefined {
  return map.pairs.find((pair) => pair.key.text === key);
}

/** Shifts a range within an item to a span within the document. */
export function spanFrom(base: number, range: ItemRange): Span {
  return { start: base + range.from, end: base + range.to };
}
