/**
 * How many things at the beginning of a row meet a condition, found by halving: the row must be in such an order that none
 * behind the first one that does not meet it meets it again.
 */
export function countWhile(length: number, meets: (index: number) => boolean): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (meets(middle)) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** The last of some starts, in order, that lies at an offset or before it; the first one where none does. */
export function lastUpTo(starts: ArrayLike<number>, offset: number): number {
  return Math.max(0, countWhile(starts.length, (index) => (starts[index] ?? 0) <= offset) - 1);
}
