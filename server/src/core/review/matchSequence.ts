/** Two things that are one thing in two versions. */
export interface Matched<One> {
  readonly before: One;
  readonly after: One;
  readonly from: number;
  readonly to: number;
}

export interface Matching<One> {
  readonly pairs: readonly Matched<One>[];
  readonly removed: readonly One[];
  readonly added: readonly One[];
}

export interface MatchBy<One> {
  /** The id, where the thing has one; of two with the same, the first goes with the first. */
  readonly identity: (one: One) => string | undefined;
  /** How alike two things are that no id matches: 0 not at all, 1 the same; below `least` they are two things. */
  readonly likeness: (before: One, after: One) => number;
  readonly least: number;
}

/**
 * Matches the things of a list in two versions: by id, and what is left by what is in them, the most alike first. Swap
 * the two lists and the same pairs come out.
 */
export function matchSequence<One>(
  before: readonly One[],
  after: readonly One[],
  { identity, likeness, least }: MatchBy<One>,
): Matching<One> {
  const goesTo = sameIdentity(before.map(identity), after.map(identity));
  const taken = new Set(goesTo.values());
  const restBefore = [...before.keys()].filter((index) => !goesTo.has(index));
  const restAfter = [...after.keys()].filter((index) => !taken.has(index));
  for (const [from, to] of mostAlike(restBefore, restAfter, (a, b) => at(before, after, a, b, likeness), least)) {
    goesTo.set(from, to);
    taken.add(to);
  }
  const pairs = [...goesTo]
    .sort(([a], [b]) => a - b)
    .map(([from, to]) => ({ before: before[from] as One, after: after[to] as One, from, to }));
  return {
    pairs,
    removed: before.filter((_, index) => !goesTo.has(index)),
    added: after.filter((_, index) => !taken.has(index)),
  };
}

type Ids = readonly (string | undefined)[];

/** Pairs of the same id. Where an id stands several times, those that keep their order go together first. */
function sameIdentity(before: Ids, after: Ids): Map<number, number> {
  const hasRepeats = [before, after].some((ids) => {
    const known = ids.filter((id) => id !== undefined);
    return new Set(known).size < known.length;
  });
  const goesTo = hasRepeats ? inOrder(before, after) : new Map<number, number>();
  const taken = new Set(goesTo.values());
  const open = new Map<string, number[]>();
  for (const [index, id] of after.entries())
    if (id !== undefined && !taken.has(index)) open.set(id, [...(open.get(id) ?? []), index]);
  for (const [index, id] of before.entries()) {
    const to = id === undefined || goesTo.has(index) ? undefined : open.get(id)?.shift();
    if (to !== undefined) goesTo.set(index, to);
  }
  return goesTo;
}

/** The longest row of ids that stands in both in the same order. */
function inOrder(before: Ids, after: Ids): Map<number, number> {
  const width = after.length + 1;
  const longest = new Uint32Array((before.length + 1) * width);
  const isSame = (i: number, j: number) => before[i] !== undefined && before[i] === after[j];
  for (let i = before.length - 1; i >= 0; i--)
    for (let j = after.length - 1; j >= 0; j--)
      longest[i * width + j] = isSame(i, j)
        ? 1 + (longest[(i + 1) * width + j + 1] ?? 0)
        : Math.max(longest[(i + 1) * width + j] ?? 0, longest[i * width + j + 1] ?? 0);
  const goesTo = new Map<number, number>();
  for (let i = 0, j = 0; i < before.length && j < after.length; ) {
    if (isSame(i, j)) goesTo.set(i++, j++);
    else if ((longest[(i + 1) * width + j] ?? 0) >= (longest[i * width + j + 1] ?? 0)) i++;
    else j++;
  }
  return goesTo;
}

function at<One>(
  before: readonly One[],
  after: readonly One[],
  a: number,
  b: number,
  likeness: (a: One, b: One) => number,
) {
  return likeness(before[a] as One, after[b] as One);
}

function* mostAlike(
  before: readonly number[],
  after: readonly number[],
  likeness: (a: number, b: number) => number,
  least: number,
): Generator<readonly [number, number]> {
  const candidates = before.flatMap((a, i) =>
    after.flatMap((b, j) => {
      const alike = likeness(a, b);
      return alike < least ? [] : [{ a, b, alike, apart: Math.abs(i - j), sum: i + j }];
    }),
  );
  candidates.sort((x, y) => y.alike - x.alike || x.apart - y.apart || x.sum - y.sum);
  const used = { before: new Set<number>(), after: new Set<number>() };
  for (const { a, b } of candidates) {
    if (used.before.has(a) || used.after.has(b)) continue;
    used.before.add(a);
    used.after.add(b);
    yield [a, b];
  }
}

/**
 * Those of the pairs that changed their place to the others: all but the heaviest run that kept its order. Every pair
 * weighs about the same, and a little more by what `weight` says (below 1e-3), so that either direction leaves the same.
 */
export function movedPairs<One>(
  pairs: readonly Matched<One>[],
  weight: (one: Matched<One>) => number,
): readonly Matched<One>[] {
  const best: number[] = [];
  const previous: number[] = [];
  for (const [i, pair] of pairs.entries()) {
    best[i] = 1 + weight(pair);
    previous[i] = -1;
    for (let j = 0; j < i; j++) {
      const sum = (best[j] ?? 0) + 1 + weight(pair);
      if ((pairs[j]?.to ?? 0) < pair.to && sum > (best[i] ?? 0)) {
        best[i] = sum;
        previous[i] = j;
      }
    }
  }
  const kept = new Set<number>();
  let at = best.indexOf(Math.max(...best, 0));
  while (at >= 0) {
    kept.add(at);
    at = previous[at] ?? -1;
  }
  return pairs.filter((_, index) => !kept.has(index));
}

/** How alike two texts are by their words: twice what they share over what they have, 0 to 1. */
export function wordLikeness(first: string, second: string): number {
  const [a, b] = [tokens(first), tokens(second)];
  if (a.length + b.length === 0) return 1;
  const counts = new Map<string, number>();
  for (const word of a) counts.set(word, (counts.get(word) ?? 0) + 1);
  let shared = 0;
  for (const word of b) {
    const left = counts.get(word) ?? 0;
    if (left > 0) shared++;
    counts.set(word, left - 1);
  }
  return (2 * shared) / (a.length + b.length);
}

function tokens(text: string): string[] {
  return text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
}
