import type { Shape } from '../../model/shape';
import type { Piece } from '../../syntax/split';
import { formatItem } from './formatItem';
import { firstLine, type Layout, type LineRange } from './layout';
import type { Line } from './line';
import { shapeBelow, shapeOfItems } from './shapeBelow';
import { isInside, isTouched, type Wanted } from './wanted';

/**
 * A piece of a document, made ready to be written. A leaf without `lines` is kept as it stands, and so are indentation
 * and order of all that is `fixed` around it. Columns are those of the source.
 */
export type Block = LeafBlock | OpenedBlock | EntryBlock;

export interface LeafBlock extends LineRange {
  readonly kind: 'leaf';
  readonly key: string | undefined;
  readonly lines: readonly Line[] | undefined;
  readonly fixed: boolean;
}

export interface OpenedBlock {
  readonly kind: 'opened';
  readonly first: number;
  readonly key: string | undefined;
  readonly comment: string;
  /** Whether the line of the key may be written anew. */
  readonly wanted: boolean;
  readonly fixed: boolean;
  readonly container: 'map' | 'list';
  readonly column: number;
  readonly shape: Shape | undefined;
  readonly blocks: readonly Block[];
}

/** An entry of a list that is a map; `column` is that of its keys. */
export interface EntryBlock {
  readonly kind: 'entry';
  readonly first: number;
  readonly key: undefined;
  readonly fixed: boolean;
  readonly column: number;
  readonly gap: number;
  readonly shape: Shape | undefined;
  readonly blocks: readonly Block[];
}

/** Formats every leaf that is wanted, and finds out what has to keep its place. `shape` is that of the container. */
export class BlockMaker {
  readonly #layout: Layout;
  readonly #wanted: Wanted;

  constructor(layout: Layout, wanted: Wanted) {
    this.#layout = layout;
    this.#wanted = wanted;
  }

  blocks(pieces: readonly Piece[], container: 'map' | 'list', shape: Shape | undefined): Block[] {
    return pieces.map((piece) => {
      if (piece.kind === 'leaf') return this.#leaf(piece, container, shape);
      return piece.kind === 'opened' ? this.#opened(piece, shape) : this.#entry(piece, shapeOfItems(shape));
    });
  }

  #leaf(piece: Piece & { kind: 'leaf' }, container: 'map' | 'list', shape: Shape | undefined): LeafBlock {
    const { first, end } = piece;
    const item = this.#layout.soundItem(first);
    const mayChange = item !== undefined && !piece.misplaced && isTouched(this.#wanted, { first, end });
    const written = mayChange ? formatItem(item, container === 'map' ? 'pair' : 'list-item', shape) : undefined;
    const rest = { first, key: this.#layout.keyOf(first), lines: written?.lines, fixed: written === undefined };
    return { kind: 'leaf', end: written === undefined ? end : first + written.height, ...rest };
  }

  #opened(piece: Piece & { kind: 'opened' }, above: Shape | undefined): OpenedBlock {
    const { line: first, container, pieces } = piece;
    const { key, comment } = this.#layout.headerOf(first) ?? { key: undefined, comment: '' };
    const shape = key === undefined ? undefined : shapeBelow(above, key);
    const blocks = this.blocks(pieces, container, shape);
    const wanted =
      key !== undefined &&
      this.#layout.soundItem(first) !== undefined &&
      isInside(this.#wanted, { first, end: first + 1 });
    const fixed = !wanted || this.#isFixed(blocks);
    const column = this.#layout.lines[firstLine(pieces[0] ?? piece)]?.indent ?? 0;
    return { kind: 'opened', first, key, comment, wanted, fixed, container, column, shape, blocks };
  }

  #entry(piece: Piece & { kind: 'entry' }, shape: Shape | undefined): EntryBlock {
    const first = firstLine(piece);
    const column = this.#layout.columnBehindDash(first);
    const gap = column - (this.#layout.lines[first]?.indent ?? 0);
    const blocks = this.blocks(piece.pieces, 'map', shape);
    return { kind: 'entry', first, key: undefined, fixed: this.#isFixed(blocks), column, gap, shape, blocks };
  }

  #isFixed(blocks: readonly Block[]): boolean {
    return this.#wanted.structure === 'fixed' || blocks.some(({ fixed }) => fixed);
  }
}
