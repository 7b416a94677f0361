/** How many characters two texts have in common at their beginning, and how many of the rest at their end. */
export interface CommonEnds {
  readonly head: number;
  readonly tail: number;
}

/** Stretches are compared by the engine, which is many times as fast as one character after another. */
const STRETCH = 2048;

/** What an edit has left alone at both ends of a text. The two stretches never overlap in either text. */
export function commonEnds(before: string, after: string): CommonEnds {
  const shorter = Math.min(before.length, after.length);
  const head = commonHead(before, after, shorter);
  return { head, tail: commonTail(before, after, shorter - head) };
}

function commonHead(before: string, after: string, most: number): number {
  let at = 0;
  while (at + STRETCH <= most && before.slice(at, at + STRETCH) === after.slice(at, at + STRETCH)) at += STRETCH;
  while (at < most && before.charCodeAt(at) === after.charCodeAt(at)) at++;
  return at;
}

function commonTail(before: string, after: string, most: number): number {
  const { length } = before;
  const shift = after.length - length;
  const first = length - most;
  let at = length;
  while (at - STRETCH >= first && before.slice(at - STRETCH, at) === after.slice(at - STRETCH + shift, at + shift)) {
    at -= STRETCH;
  }
  while (at > first && before.charCodeAt(at - 1) === after.charCodeAt(at - 1 + shift)) at--;
  return length - at;
}
