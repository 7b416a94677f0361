import { commonEnds } from '../text/commonEnds';
import { lastUpTo } from '../text/countWhile';
import type { DocumentText } from '../text/documentText';
import { type Lines, type LinesInMaking, scanLines } from './lines';

/** The lines of a text, and how many of them at either end are those of the text before it. */
export interface KeptLines {
  readonly lines: Lines;
  readonly head: number;
  readonly tail: number;
}

/** A text with its lines. */
export interface LinedText {
  readonly text: DocumentText;
  readonly lines: Lines;
}

/**
 * The lines of a text that was edited. Only those that the edit touches are looked at; the others are copied, and moved.
 * It gives what `linesOf` gives, since a line is kept where all of it, and the line end before it, is the same.
 */
export function linesAfter(before: LinedText, text: DocumentText): KeptLines {
  const { starts } = before.lines;
  const ends = commonEnds(before.text.pieces, text.pieces);
  const head = lastUpTo(starts, ends.head);
  // The first line that is the same together with the line end before it; one behind the last where there is none.
  const firstOfTail = lastUpTo(starts, before.text.length - ends.tail) + 1;
  const shift = text.length - before.text.length;
  const from = head === 0 ? (text.charCodeAt(0) === 0xfeff ? 1 : 0) : (starts[head] ?? 0);
  const next = starts[firstOfTail];
  const changed = scanLines(text, from, next === undefined ? undefined : next + shift);
  const tail = starts.length - firstOfTail;
  return { lines: joined(before.lines, head, changed, firstOfTail, shift), head, tail };
}

function joined(before: Lines, head: number, changed: LinesInMaking, firstOfTail: number, shift: number): Lines {
  const newTail = head + changed.starts.length;
  const count = newTail + before.starts.length - firstOfTail;
  return {
    starts: moved(spliced(new Int32Array(count), before.starts, head, changed.starts, firstOfTail), newTail, shift),
    indents: spliced(new Int32Array(count), before.indents, head, changed.indents, firstOfTail),
    marks: spliced(new Uint8Array(count), before.marks, head, changed.marks, firstOfTail),
    unsafe: [
      ...before.unsafe.filter((line) => line < head),
      ...changed.unsafe.map((line) => line + head),
      ...before.unsafe.filter((line) => line >= firstOfTail).map((line) => line - firstOfTail + newTail),
    ],
    textLength: before.textLength + shift,
  };
}

/** A column with its first rows, the changed ones, and its last rows. */
function spliced<Column extends Int32Array | Uint8Array>(
  into: Column,
  before: Column,
  head: number,
  changed: readonly number[],
  firstOfTail: number,
): Column {
  into.set(before.subarray(0, head));
  into.set(changed, head);
  into.set(before.subarray(firstOfTail), head + changed.length);
  return into;
}

function moved(starts: Int32Array, first: number, shift: number): Int32Array {
  if (shift !== 0) for (let i = first; i < starts.length; i++) starts[i] = (starts[i] ?? 0) + shift;
  return starts;
}
