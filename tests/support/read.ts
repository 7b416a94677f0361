import type { DocumentKind } from '../../server/src/core/syntax/documentKind';
import type { Node } from '../../server/src/core/syntax/node';
import { readDocument, type SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import type { DocumentText } from '../../server/src/core/text/documentText';

export function read(
  text: string | DocumentText,
  kind: DocumentKind = 'procedure',
  memo = new ReadingMemo(),
): SyntaxDocument {
  return readDocument('file:///work/a.yaml', kind, text, memo);
}

export type Plain = string | undefined | Plain[] | { [key: string]: Plain };

/** A node as plain values, for comparing trees. */
export function plain(node: Node | undefined): Plain {
  if (node === undefined) return undefined;
  if (node.kind === 'scalar') return node.text;
  if (node.kind === 'list') return node.items.map(plain);
  return Object.fromEntries(node.pairs.map(({ key, value }) => [key.text, plain(value)]));
}

/** The tree of a document as plain values. */
export function plainRoot(document: SyntaxDocument): Plain {
  return plain(document.root ?? document.other);
}

/** Every node of a document, with the source text that it covers. */
export function* nodesOf(node: Node | undefined): Generator<Node> {
  if (node === undefined) return;
  yield node;
  if (node.kind === 'list') for (const item of node.items) yield* nodesOf(item);
  if (node.kind === 'map') {
    for (const { key, value } of node.pairs) {
      yield key;
      yield* nodesOf(value);
    }
  }
}
