import type { Pieces } from './pieces';

/** How many characters two texts have in common at their beginning, and how many of the rest at their end. */
export interface CommonEnds {
  readonly head: number;
  readonly tail: number;
}

/**
 * What edits have left alone at both ends of a text. The two stretches never overlap in either text. Pieces that both
 * texts share are not looked into, so it costs the pieces that were edited; texts that share none are compared as they are.
 */
export function commonEnds(before: Pieces, after: Pieces): CommonEnds {
  const shorter = Math.min(before.length, after.length);
  const head = commonHead(before, after, shorter);
  return { head, tail: commonTail(before, after, shorter - head) };
}

export function isSameText(one: Pieces, other: Pieces): boolean {
  return one.length === other.length && commonHead(one, other, one.length) === one.length;
}

function commonHead(before: Pieces, after: Pieces, most: number): number {
  let at = 0;
  for (let i = 0, j = 0; at < most; ) {
    const [one, other] = [before.texts[i] ?? '', after.texts[j] ?? ''];
    const [from, otherFrom] = [at - (before.starts[i] ?? 0), at - (after.starts[j] ?? 0)];
    const length = Math.min(one.length - from, other.length - otherFrom, most - at);
    // The engine sees at once that two texts are one and the same, and compares others faster than a loop does.
    const isShared = from === otherFrom && one === other;
    if (!isShared && one.slice(from, from + length) !== other.slice(otherFrom, otherFrom + length)) {
      return at + headOf(one, from, other, otherFrom);
    }
    at += length;
    if (from + length === one.length) i++;
    if (otherFrom + length === other.length) j++;
  }
  return at;
}

/** How far two texts agree from two offsets on, where it is known that they come to differ. */
function headOf(one: string, from: number, other: string, otherFrom: number): number {
  let same = 0;
  while (one.charCodeAt(from + same) === other.charCodeAt(otherFrom + same)) same++;
  return same;
}

function commonTail(before: Pieces, after: Pieces, most: number): number {
  let same = 0;
  for (let i = before.texts.length - 1, j = after.texts.length - 1; same < most; ) {
    const [one, other] = [before.texts[i] ?? '', after.texts[j] ?? ''];
    const to = before.length - same - (before.starts[i] ?? 0);
    const otherTo = after.length - same - (after.starts[j] ?? 0);
    const length = Math.min(to, otherTo, most - same);
    const isShared = to === otherTo && one === other;
    if (!isShared && one.slice(to - length, to) !== other.slice(otherTo - length, otherTo)) {
      return same + tailOf(one, to, other, otherTo);
    }
    same += length;
    if (length === to) i--;
    if (length === otherTo) j--;
  }
  return same;
}

function tailOf(one: string, to: number, other: string, otherTo: number): number {
  let same = 0;
  while (one.charCodeAt(to - same - 1) === other.charCodeAt(otherTo - same - 1)) same++;
  return same;
}
