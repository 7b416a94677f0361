import { commonEnds } from './commonEnds';

const LF = 10;
const CR = 13;

let last: { readonly text: string; readonly starts: Int32Array } = { text: '', starts: new Int32Array(1) };

/**
 * Where the lines of a text start; they end at LF, CR LF or a lone CR. An editor asks for one version of a text after
 * another, so those of the text that was asked for last are remembered, and only what differs from it is looked at.
 */
export function lineStarts(text: string): Int32Array {
  if (text !== last.text) last = { text, starts: startsAfter(last, text) };
  return last.starts;
}

function startsAfter(before: { readonly text: string; readonly starts: Int32Array }, text: string): Int32Array {
  const { head, tail } = commonEnds(before.text, text);
  const shift = text.length - before.text.length;
  // Whether a line starts at an offset is said by the characters at both sides of it.
  const kept = before.starts.subarray(0, Math.max(1, firstFrom(before.starts, head)));
  const moved = before.starts.subarray(firstFrom(before.starts, before.text.length - tail + 1));
  const between = startsBetween(text, Math.max(1, head), text.length - tail);
  const starts = new Int32Array(kept.length + between.length + moved.length);
  starts.set(kept);
  starts.set(between, kept.length);
  starts.set(moved, kept.length + between.length);
  for (let i = kept.length + between.length; i < starts.length; i++) starts[i] = (starts[i] ?? 0) + shift;
  return starts;
}

function startsBetween(text: string, from: number, to: number): number[] {
  const starts: number[] = [];
  for (let at = from; at <= to; at++) {
    const code = text.charCodeAt(at - 1);
    if (code === LF || (code === CR && text.charCodeAt(at) !== LF)) starts.push(at);
  }
  return starts;
}

/** How many lines start before an offset. */
function firstFrom(starts: Int32Array, offset: number): number {
  let low = 0;
  let high = starts.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((starts[middle] ?? 0) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}
