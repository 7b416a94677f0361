import type { BuildSet, BuildSpace } from '../../builds';

/** `from` waits for `to` on these builds. */
export interface Edge<Why> {
  readonly from: string;
  readonly to: string;
  readonly where: BuildSet;
  readonly why: Why;
}

/** What waits for each other in a circle: each edge ends where the next begins, the last where the first begins. */
export interface Knot<Why> {
  readonly edges: readonly Edge<Why>[];
  readonly where: BuildSet;
}

/** Where things count as free although they are not, since it is told already what keeps them. */
export type Freed = ReadonlyMap<string, BuildSet>;

/** More than anybody mends in one go; a document with more of them is wrong in another way. */
const MOST = 30;

/**
 * The circles that keep things waiting for ever, one for each knot. `solve` gives what waits in the end, in the order of
 * the text; then the shortest circle is told and counts as undone, and what still waits is looked at again. So what only
 * waits for a knot is not told, and two circles that share a part are told once.
 */
export function knotsOf<Why>(
  space: BuildSpace,
  solve: (freed: Freed) => readonly Edge<Why>[],
  freedBefore: Freed = new Map(),
): Knot<Why>[] {
  const freed = new Map(freedBefore);
  const knots: Knot<Why>[] = [];
  while (knots.length < MOST) {
    const knot = firstKnot(solve(freed));
    if (knot === undefined) break;
    knots.push(knot);
    for (const { from } of knot.edges) freed.set(from, (freed.get(from) ?? space.nothing).or(knot.where));
  }
  return knots;
}

function firstKnot<Why>(edges: readonly Edge<Why>[]): Knot<Why> | undefined {
  const first = edges[0];
  if (first === undefined) return undefined;
  const sample = alikeWithin(first.where, edges);
  const circle = shortestCircle(
    first.from,
    edges.filter((edge) => edge.where.overlaps(sample)),
  );
  const [head] = circle;
  return head === undefined
    ? undefined
    : { edges: circle, where: circle.reduce((set, edge) => set.and(edge.where), head.where) };
}

/** Some builds of a set on which every edge holds either for all or for none, so that they can be looked at as one. */
function alikeWithin(set: BuildSet, edges: readonly Edge<unknown>[]): BuildSet {
  return edges.reduce((rest, { where }) => (rest.overlaps(where) ? rest.and(where) : rest), set);
}

/** The shortest circle that can be reached from a start, beginning with what stands first in the text. */
function shortestCircle<Why>(start: string, edges: readonly Edge<Why>[]): readonly Edge<Why>[] {
  const leaving = new Map<string, Edge<Why>[]>();
  for (const edge of edges) leaving.set(edge.from, [...(leaving.get(edge.from) ?? []), edge]);
  const reached = new Set([start]);
  for (const id of reached) for (const { to } of leaving.get(id) ?? []) reached.add(to);
  let best: readonly Edge<Why>[] = [];
  for (const id of leaving.keys()) {
    if (!reached.has(id)) continue;
    const circle = wayBack(id, leaving);
    if (circle.length > 0 && (best.length === 0 || circle.length < best.length)) best = circle;
  }
  return best;
}

/** The shortest way from a place back to itself; empty where there is none. */
function wayBack<Why>(home: string, leaving: ReadonlyMap<string, readonly Edge<Why>[]>): Edge<Why>[] {
  const cameBy = new Map<string, Edge<Why>>();
  const reached = new Set([home]);
  for (const id of reached) {
    for (const edge of leaving.get(id) ?? []) {
      if (edge.to === home) return wayTo(edge, home, cameBy);
      if (!reached.has(edge.to)) cameBy.set(edge.to, edge);
      reached.add(edge.to);
    }
  }
  return [];
}

function wayTo<Why>(last: Edge<Why>, home: string, cameBy: ReadonlyMap<string, Edge<Why>>): Edge<Why>[] {
  const way = [last];
  for (let at = last.from; at !== home; ) {
    const edge = cameBy.get(at);
    if (edge === undefined) break;
    way.unshift(edge);
    at = edge.from;
  }
  return way;
}
