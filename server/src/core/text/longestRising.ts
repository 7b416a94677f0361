import { countWhile } from './countWhile';

/** The most pairs whose second members rise, of pairs whose first members do. */
export function longestRising<Pair extends readonly [number, number, ...unknown[]]>(pairs: readonly Pair[]): Pair[] {
  // The last pair of the best row of each length so far, and what stands before each pair in its row.
  const ends: number[] = [];
  const before: number[] = [];
  for (const [i, [, second]] of pairs.entries()) {
    const length = countWhile(ends.length, (index) => (pairs[ends[index] ?? 0]?.[1] ?? 0) < second);
    before.push(length === 0 ? -1 : (ends[length - 1] ?? -1));
    ends[length] = i;
  }
  const row: Pair[] = [];
  for (let i = ends.at(-1) ?? -1; i >= 0; i = before[i] ?? -1) row.push(pairs[i] as Pair);
  return row.reverse();
}
