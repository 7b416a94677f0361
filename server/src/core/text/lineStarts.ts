import { commonEnds } from './commonEnds';
import { countWhile } from './countWhile';
import { type Pieces, piecesOf, stretchOf } from './pieces';

const LF = 10;
const CR = 13;

/** A text, and where its lines start. */
export interface StartedLines {
  readonly pieces: Pieces;
  readonly starts: Int32Array;
}

let last: StartedLines & { readonly text: string } = { text: '', pieces: piecesOf(''), starts: new Int32Array(1) };

/**
 * Where the lines of a text start; they end at LF, CR LF or a lone CR. An editor asks for one version of a text after
 * another, so those of the text that was asked for last are remembered, and only what differs from it is looked at.
 */
export function lineStarts(text: string): Int32Array {
  if (text !== last.text) {
    const pieces = piecesOf(text);
    last = { text, pieces, starts: startsAfter(last, pieces) };
  }
  return last.starts;
}

/** Where the lines of a text start, from those of a text that it has much in common with. */
export function startsAfter(before: StartedLines, pieces: Pieces): Int32Array {
  const { head, tail } = commonEnds(before.pieces, pieces);
  const shift = pieces.length - before.pieces.length;
  // Whether a line starts at an offset is said by the characters at both sides of it.
  const kept = before.starts.subarray(0, Math.max(1, firstFrom(before.starts, head)));
  const moved = before.starts.subarray(firstFrom(before.starts, before.pieces.length - tail + 1));
  const between = startsBetween(pieces, Math.max(1, head), pieces.length - tail);
  const starts = new Int32Array(kept.length + between.length + moved.length);
  starts.set(kept);
  starts.set(between, kept.length);
  starts.set(moved, kept.length + between.length);
  if (shift !== 0)
    for (let i = kept.length + between.length; i < starts.length; i++) starts[i] = (starts[i] ?? 0) + shift;
  return starts;
}

function startsBetween(pieces: Pieces, from: number, to: number): number[] {
  const text = stretchOf(pieces, from - 1, to + 1);
  const starts: number[] = [];
  for (let i = 0; from + i <= to; i++) {
    const code = text.charCodeAt(i);
    if (code === LF || (code === CR && text.charCodeAt(i + 1) !== LF)) starts.push(from + i);
  }
  return starts;
}

/** How many lines start before an offset. */
function firstFrom(starts: Int32Array, offset: number): number {
  return countWhile(starts.length, (line) => (starts[line] ?? 0) < offset);
}
