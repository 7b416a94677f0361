import { lastUpTo } from './countWhile';

/**
 * A text in pieces of a few thousand characters. An edit of a long text makes one or two of them anew and shares all others
 * with the text before it, so that nothing goes through the whole text: neither making the new one nor finding what differs.
 */
export interface Pieces {
  /** In their order; none is empty but the only one of an empty text. */
  readonly texts: readonly string[];
  /** Where each piece starts. */
  readonly starts: readonly number[];
  readonly length: number;
  /** The usual length of a piece, UTF-16 units; a quarter and twice of it are the bounds while somebody types. */
  readonly usual: number;
}

/** Short enough to be copied at every key, and long enough for a long text to be a few hundred pieces. */
const USUAL = 4096;

export function piecesOf(text: string, usual = USUAL): Pieces {
  return put(cut(text, usual), usual);
}

/** The piece that holds an offset; the last one for the end of the text. */
export function pieceAt({ starts }: Pieces, offset: number): number {
  return lastUpTo(starts, offset);
}

/** A stretch of the text, as far as there is one. */
export function stretchOf(pieces: Pieces, from: number, to: number): string {
  const { texts, starts } = pieces;
  let at = from;
  let found = '';
  for (let i = pieceAt(pieces, at); at < to && i < texts.length; i++) {
    const start = starts[i] ?? 0;
    found += (texts[i] ?? '').slice(at - start, to - start);
    at = starts[i + 1] ?? pieces.length;
  }
  return found;
}

/** The pieces with what stands from one offset to another replaced. Offsets that lie within the text, in this order. */
export function withEdit(pieces: Pieces, from: number, to: number, added: string): Pieces {
  const { texts, starts, usual } = pieces;
  const shortest = usual / 4;
  let first = pieceAt(pieces, from);
  let last = pieceAt(pieces, to);
  const head = (texts[first] ?? '').slice(0, from - (starts[first] ?? 0));
  let middle = head + added + (texts[last] ?? '').slice(to - (starts[last] ?? 0));
  // Pieces that became too short are joined with a neighbour, or there would be ever more of them.
  if (middle.length < shortest && last + 1 < texts.length) middle += texts[++last] ?? '';
  else if (middle.length < shortest && first > 0) middle = (texts[--first] ?? '') + middle;
  return put([...texts.slice(0, first), ...cut(middle, usual), ...texts.slice(last + 1)], usual);
}

function cut(text: string, usual: number): string[] {
  if (text.length <= 2 * usual) return [text];
  const count = Math.ceil(text.length / usual);
  const length = Math.ceil(text.length / count);
  return Array.from({ length: count }, (_, i) => text.slice(i * length, (i + 1) * length)).filter((one) => one !== '');
}

function put(texts: readonly string[], usual: number): Pieces {
  const all = texts.length > 1 ? texts.filter((text) => text !== '') : texts;
  const starts: number[] = [];
  let length = 0;
  for (const text of all) {
    starts.push(length);
    length += text.length;
  }
  return { texts: all, starts, length, usual };
}
