import { CUT_PLANS } from '../../syntax/cutPlan';
import { disarm } from '../../syntax/disarm';
import { hasMark, lineEnd, linesOf, Mark } from '../../syntax/lines';
import type { Item } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { type Piece, split } from '../../syntax/split';

/** The lines of a document from `first` on, `end` exclusive. */
export interface LineRange {
  readonly first: number;
  readonly end: number;
}

/** A line of the text: offsets without its line end, and how far it is indented by spaces. */
export interface SourceLine {
  readonly start: number;
  readonly end: number;
  readonly indent: number;
  /** Blank, or nothing but a comment. */
  readonly trivia: boolean;
}

/** A document cut into its pieces, with the items that were read from them. */
export class Layout {
  readonly lines: readonly SourceLine[];
  readonly pieces: readonly Piece[];
  /** Whether merge-conflict markers, directives or a second document stand in the text. */
  readonly isMixed: boolean;
  readonly #document: SyntaxDocument;
  readonly #items: ReadonlyMap<number, Item>;
  readonly #misplaced: ReadonlySet<Item>;

  constructor(document: SyntaxDocument) {
    this.#document = document;
    const { content } = document;
    const lines = linesOf(content);
    const safe = disarm(content, lines);
    this.lines = Array.from(lines.starts, (start, i) => ({
      start,
      end: lineEnd(lines, i),
      indent: lines.indents[i] ?? 0,
      trivia: hasMark(lines, i, Mark.TRIVIA),
    }));
    this.pieces = split(safe.text, lines, CUT_PLANS[document.kind]);
    this.isMixed = safe.disarmed.some(({ what }) => what !== 'start-marker');
    const startOf = (item: Item) => document.spanOf({ item, from: 0, to: 0 }).start;
    this.#items = new Map(document.items.map((item) => [startOf(item), item]));
    this.#misplaced = new Set(document.problems.map(({ range }) => range.item));
  }

  /** The item that was read from a line on; undefined where something is wrong with it. */
  soundItem(first: number): Item | undefined {
    const item = this.#items.get(this.lines[first]?.start ?? -1);
    return item === undefined || this.#misplaced.has(item) ? undefined : item;
  }

  textOf(index: number): string {
    const line = this.lines[index];
    return line === undefined ? '' : this.#document.text.slice(line.start, line.end);
  }

  lineEndOf(index: number): string {
    const line = this.lines[index];
    const next = this.lines[index + 1];
    return line === undefined ? '' : this.#document.text.slice(line.end, next?.start ?? line.end);
  }

  /** The column of what stands behind the dash of a line. */
  columnBehindDash(index: number): number {
    return /^ *-? */.exec(this.textOf(index))?.[0].length ?? 0;
  }

  /** The key that a line opens with. */
  keyOf(index: number): string | undefined {
    return /^ *(?:- +)?([\w-]+)[ \t]*:/.exec(this.textOf(index))?.[1];
  }

  /** The key and the comment of a line that holds a key whose value stands below. */
  headerOf(index: number): { readonly key: string; readonly comment: string } | undefined {
    const found = /^ *(?:- +)?([\w-]+):[ \t]*(#.*)?$/.exec(this.textOf(index));
    return found === null ? undefined : { key: found[1] ?? '', comment: (found[2] ?? '').trimEnd() };
  }
}

export function firstLine(piece: Piece): number {
  if (piece.kind === 'leaf') return piece.first;
  if (piece.kind === 'opened') return piece.line;
  const [first] = piece.pieces;
  return first === undefined ? 0 : firstLine(first);
}
