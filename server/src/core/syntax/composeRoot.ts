import type { ItemReader } from './itemReader';
import type { Item, ItemRange, ListNode, MapNode, Node, Pair, SyntaxProblem } from './node';
import type { Piece } from './split';

export interface ComposedRoot {
  readonly root: MapNode | undefined;
  readonly other: Node | undefined;
  readonly problems: readonly SyntaxProblem[];
}

/** Reads the pieces and puts them together again as one tree. */
export function composeRoot(pieces: readonly Piece[], reader: ItemReader): ComposedRoot {
  const composer = new RootComposer(reader);
  const pairs = composer.pairs(pieces);
  const [first] = reader.items;
  const other = pairs.length === 0 ? first?.root : undefined;
  const root = first !== undefined && other === undefined ? mapOf(pairs, first) : undefined;
  return { root, other, problems: composer.problems };
}

class RootComposer {
  readonly problems: SyntaxProblem[] = [];

  constructor(readonly reader: ItemReader) {}

  pairs(pieces: readonly Piece[]): Pair[] {
    const pairs: Pair[] = [];
    for (const piece of pieces) for (const pair of this.#pairsOf(piece)) pairs.push(pair);
    return pairs;
  }

  #pairsOf(piece: Piece): readonly Pair[] {
    if (piece.kind === 'entry') return [];
    if (piece.kind === 'leaf') return pairsIn(this.reader.read(piece.first, piece.end).root);
    const header = this.reader.read(piece.line, piece.line + 1);
    const key = pairsIn(header.root)[0]?.key;
    if (key === undefined) return [];
    const value =
      piece.container === 'map' ? mapOf(this.pairs(piece.pieces), header) : this.#list(piece.pieces, header);
    return [{ key, value }];
  }

  #list(pieces: readonly Piece[], header: Item): ListNode {
    const items: Node[] = [];
    for (const piece of pieces) {
      if (piece.kind === 'entry') {
        const first = this.reader.items.length;
        const pairs = this.pairs(piece.pieces);
        items.push(mapOf(pairs, this.reader.items[first] ?? header));
      } else if (piece.kind === 'leaf') for (const item of this.#listItems(piece)) items.push(item);
    }
    return { ...wholeOf(header), kind: 'list', remembered: undefined, flow: false, items };
  }

  #listItems(piece: Piece & { kind: 'leaf' }): readonly Node[] {
    const item = this.reader.read(piece.first, piece.end);
    if (piece.misplaced) {
      const range = { item, from: 0, to: firstLineLength(item.text) };
      this.problems.push({
        kind: 'broken',
        range,
        message: 'This entry does not stand below its neighbours; line its dash up with theirs',
      });
    }
    return item.root?.kind === 'list' ? item.root.items : item.root === undefined ? [] : [item.root];
  }
}

/** The pairs of an item that is a map, or the only entry of a list that is one. */
function pairsIn(node: Node | undefined): readonly Pair[] {
  if (node?.kind === 'map') return node.pairs;
  const only = node?.kind === 'list' ? node.items[0] : undefined;
  return only?.kind === 'map' ? only.pairs : [];
}

function mapOf(pairs: readonly Pair[], header: Item): MapNode {
  return { ...wholeOf(header), kind: 'map', remembered: undefined, flow: false, pairs };
}

/** What is put together from several items is shown at the first line of the first of them. */
function wholeOf(header: Item): ItemRange {
  return { item: header, from: header.text.length - header.text.trimStart().length, to: firstLineLength(header.text) };
}

function firstLineLength(text: string): number {
  const newline = text.search(/\r?\n/);
  return newline < 0 ? text.length : newline;
}
