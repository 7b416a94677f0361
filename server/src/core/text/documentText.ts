import { isSameText } from './commonEnds';
import { lineStarts, startsAfter } from './lineStarts';
import { type Pieces, pieceAt, piecesOf, stretchOf, withEdit } from './pieces';

/**
 * The text of a document that somebody edits. It never changes: an edit gives another one, which shares with it all that
 * is the same, so that a key pressed in a long document costs no copy of it. Offsets are UTF-16 units, as in a string.
 */
export class DocumentText {
  readonly pieces: Pieces;
  #whole: string | undefined;
  #lineStarts: Int32Array | undefined;

  private constructor(pieces: Pieces, whole: string | undefined) {
    this.pieces = pieces;
    this.#whole = whole;
  }

  /** @param usual the usual length of a piece, UTF-16 units */
  static of(text: string, usual?: number): DocumentText {
    return new DocumentText(piecesOf(text, usual), text);
  }

  get length(): number {
    return this.pieces.length;
  }

  /** All of it as one string. In a long text it is made only for whoever needs it, since that takes milliseconds. */
  get whole(): string {
    this.#whole ??= this.pieces.texts.join('');
    return this.#whole;
  }

  /** Where its lines start; they end at LF, CR LF or a lone CR. */
  get lineStarts(): Int32Array {
    this.#lineStarts ??= lineStarts(this.whole);
    return this.#lineStarts;
  }

  /** What stands from one offset to another; offsets outside of the text count as its ends. */
  slice(from: number, to: number = this.length): string {
    const start = Math.max(0, from);
    const end = Math.max(start, to);
    return this.#whole === undefined ? stretchOf(this.pieces, start, end) : this.#whole.slice(start, end);
  }

  /** The UTF-16 unit at an offset; NaN outside of the text. */
  charCodeAt(at: number): number {
    if (this.#whole !== undefined) return this.#whole.charCodeAt(at);
    const piece = pieceAt(this.pieces, at);
    return (this.pieces.texts[piece] ?? '').charCodeAt(at - (this.pieces.starts[piece] ?? 0));
  }

  /** The text with what stands from one offset to another replaced; offsets outside of it count as its ends. */
  edited(from: number, to: number, added: string): DocumentText {
    const start = Math.max(0, Math.min(from, this.length));
    const end = Math.max(start, Math.min(to, this.length));
    if (start === end && added === '') return this;
    const after = new DocumentText(withEdit(this.pieces, start, end, added), undefined);
    // Whoever asked for the lines of this text will ask for those of the next one.
    const starts = this.#lineStarts;
    if (starts !== undefined) after.#lineStarts = startsAfter({ pieces: this.pieces, starts }, after.pieces);
    return after;
  }

  isSame(other: DocumentText): boolean {
    return this === other || isSameText(this.pieces, other.pieces);
  }
}
