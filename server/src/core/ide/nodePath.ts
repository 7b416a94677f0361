import type { Node, Pair, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';

/** A scalar of a document and how one gets there from the root: every map entry on the way, and every node, outermost first. */
export interface NodePath {
  readonly scalar: ScalarNode;
  /** Whether the scalar is the key of the last pair, and not a value. */
  readonly isKey: boolean;
  readonly pairs: readonly Pair[];
  readonly nodes: readonly Node[];
}

/** All scalars of a document, in the order of the text. A hover asks once, so the whole tree is gone through. */
export function* scalarsOf(document: SyntaxDocument): Generator<NodePath> {
  if (document.root !== undefined) yield* below(document.root, [], []);
}

function* below(node: Node, pairs: readonly Pair[], above: readonly Node[]): Generator<NodePath> {
  const nodes = [...above, node];
  if (node.kind === 'scalar') yield { scalar: node, isKey: false, pairs, nodes };
  else if (node.kind === 'list') for (const item of node.items) yield* below(item, pairs, nodes);
  else {
    for (const pair of node.pairs) {
      const inner = [...pairs, pair];
      yield { scalar: pair.key, isKey: true, pairs: inner, nodes };
      if (pair.value !== undefined) yield* below(pair.value, inner, nodes);
    }
  }
}

/** The scalar at an offset; of two that touch there, the first. */
export function scalarAt(document: SyntaxDocument, offset: number): NodePath | undefined {
  for (const path of scalarsOf(document)) {
    const { start, end } = document.spanOf(path.scalar);
    if (offset >= start && offset <= end) return path;
  }
  return undefined;
}
