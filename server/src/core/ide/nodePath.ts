import type { Node, Pair, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { touching } from './touching';

/** A scalar of a document and how one gets there from the root: every map entry on the way, and every node, outermost first. */
export interface NodePath {
  readonly scalar: ScalarNode;
  /** Whether the scalar is the key of the last pair, and not a value. */
  readonly isKey: boolean;
  readonly pairs: readonly Pair[];
  readonly nodes: readonly Node[];
}

/** The scalars of a document that may touch a span, or all, in the order of the text. What stands elsewhere is passed over. */
export function* scalarsOf(
  document: SyntaxDocument,
  within: Span = { start: 0, end: document.text.length },
): Generator<NodePath> {
  if (document.root !== undefined) yield* below({ document, within }, document.root, [], []);
}

interface Search {
  readonly document: SyntaxDocument;
  readonly within: Span;
}

function* below(search: Search, node: Node, pairs: readonly Pair[], above: readonly Node[]): Generator<NodePath> {
  if (!mayTouch(search, node)) return;
  const nodes = [...above, node];
  if (node.kind === 'scalar') yield { scalar: node, isKey: false, pairs, nodes };
  else if (node.kind === 'list') {
    const { document, within } = search;
    for (const item of touching(document, node.items, itself, within)) yield* below(search, item, pairs, nodes);
  } else {
    for (const pair of node.pairs) {
      const inner = [...pairs, pair];
      if (mayTouch(search, pair.key)) yield { scalar: pair.key, isKey: true, pairs: inner, nodes };
      if (pair.value !== undefined) yield* below(search, pair.value, inner, nodes);
    }
  }
}

function itself(node: Node): Node {
  return node;
}

/** Whether something of a node may touch what is looked for. One that is put together from several items ends with its last part. */
function mayTouch({ document, within }: Search, node: Node): boolean {
  return document.spanOf(node).start <= within.end && within.start <= endOf(document, node);
}

function endOf(document: SyntaxDocument, node: Node): number {
  const { end } = document.spanOf(node);
  const pair = node.kind === 'map' ? node.pairs.at(-1) : undefined;
  const last = node.kind === 'list' ? node.items.at(-1) : (pair?.value ?? pair?.key);
  return last === undefined ? end : Math.max(end, endOf(document, last));
}

/** The scalar at an offset; of two that touch there, the first. */
export function scalarAt(document: SyntaxDocument, offset: number): NodePath | undefined {
  for (const path of scalarsOf(document, { start: offset, end: offset })) {
    const { start, end } = document.spanOf(path.scalar);
    if (offset >= start && offset <= end) return path;
  }
  return undefined;
}
