import { type ItemRange, type MapNode, type Node, type Pair, pairOf, type ScalarNode } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';

/** What the text of a document does not let be read as it was meant. */
interface Tear {
  /** Items with a problem of their own: what their shape looks like is only its echo. */
  readonly items: ReadonlySet<unknown>;
  /** The keys of the root are not those that were meant. */
  readonly root: boolean;
  /** Two texts stand in one: both sides of a merge, or two documents. */
  readonly doubled: boolean;
}

const remembered = new WeakMap<SyntaxDocument, Tear>();

function tearOf(document: SyntaxDocument): Tear {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const { problems } = document;
  const broken = problems.filter((problem) => problem.kind === 'broken');
  const doubled = problems.some(
    (problem) =>
      problem.kind === 'conflict-marker' || (problem.kind === 'not-plain' && problem.what === 'second-document'),
  );
  const atRoot = broken.some(({ range }) => /^(?:\S|[ ]*\t)/.test(range.item.text));
  const tear = { items: new Set(problems.map((problem) => problem.range.item)), root: atRoot || doubled, doubled };
  remembered.set(document, tear);
  return tear;
}

/** Whether a place lies in an item whose text is reported already, so that its shape tells nothing more. */
export function isEcho(document: SyntaxDocument, range: ItemRange): boolean {
  return tearOf(document).items.has(range.item);
}

export function isRootTorn(document: SyntaxDocument): boolean {
  return tearOf(document).root;
}

export function isDoubled(document: SyntaxDocument): boolean {
  return tearOf(document).doubled;
}

/** A pair below a node by its key, which is looked for as the very same node, with the map that holds it. */
export function pairWithKey(node: Node, key: ItemRange): { map: MapNode; pair: Pair; index: number } | undefined {
  if (node.kind === 'scalar') return undefined;
  if (node.kind === 'list') return firstOf(node.items, (item) => pairWithKey(item, key));
  const index = node.pairs.findIndex((pair) => pair.key === key);
  const pair = node.pairs[index];
  if (pair !== undefined) return { map: node, pair, index };
  return firstOf(node.pairs, ({ value }) => (value === undefined ? undefined : pairWithKey(value, key)));
}

/** The pair that came first where a key stands twice. */
export function firstWithSameKey(node: Node, key: ItemRange): Pair | undefined {
  const found = pairWithKey(node, key);
  return found === undefined ? undefined : pairOf(found.map, found.pair.key.text);
}

/** The first scalar of a node, keys included, that meets a condition. */
export function findScalar(node: Node | undefined, wanted: (scalar: ScalarNode) => boolean): ScalarNode | undefined {
  if (node === undefined) return undefined;
  if (node.kind === 'scalar') return wanted(node) ? node : undefined;
  if (node.kind === 'list') return firstOf(node.items, (item) => findScalar(item, wanted));
  return firstOf(node.pairs, ({ key, value }) => findScalar(key, wanted) ?? findScalar(value, wanted));
}

function firstOf<From, To>(items: readonly From[], find: (item: From) => To | undefined): To | undefined {
  for (const item of items) {
    const found = find(item);
    if (found !== undefined) return found;
  }
  return undefined;
}
