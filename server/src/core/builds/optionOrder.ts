import type { OptionFact } from './buildFacts';

/**
 * The order in which the diagram tests the options. Its size grows with the number of options that are tested already
 * and still matter to one that is not; so at each place comes the option that leaves the fewest of those open.
 */
export function optionOrder(options: ReadonlyMap<string, OptionFact>): string[] {
  const neighbours = neighboursOf(options);
  const unplaced = new Set(options.keys());
  const open = new Set<string>();
  const order: string[] = [];
  while (unplaced.size > 0) {
    const next = cheapestNext(unplaced, open, neighbours);
    unplaced.delete(next);
    open.add(next);
    for (const id of [...open]) if (!hasUnplaced(id, unplaced, neighbours)) open.delete(id);
    order.push(next);
  }
  return order;
}

type Neighbours = ReadonlyMap<string, ReadonlySet<string>>;

function neighboursOf(options: ReadonlyMap<string, OptionFact>): Neighbours {
  const neighbours = new Map([...options.keys()].map((id) => [id, new Set<string>()]));
  for (const { id, needs, excludes } of options.values()) {
    for (const other of [...needs, ...excludes]) {
      if (other === id) continue;
      neighbours.get(id)?.add(other);
      neighbours.get(other)?.add(id);
    }
  }
  return neighbours;
}

function cheapestNext(unplaced: ReadonlySet<string>, open: ReadonlySet<string>, neighbours: Neighbours): string {
  let best = '';
  let bestCost = Number.POSITIVE_INFINITY;
  for (const id of unplaced) {
    const cost = costOf(id, unplaced, open, neighbours);
    if (cost < bestCost) [best, bestCost] = [id, cost];
  }
  return best;
}

/**
 * How many options stay open after this one. An option that touches nothing open would start a second front beside the
 * first, so it waits until the first is closed; among starts, the one with the fewest neighbours lies at an edge.
 */
function costOf(id: string, unplaced: ReadonlySet<string>, open: ReadonlySet<string>, neighbours: Neighbours): number {
  const own = neighbours.get(id) ?? new Set<string>();
  const waiting = [...own].filter((other) => unplaced.has(other)).length;
  if (open.size === 0) return waiting;
  if (![...own].some((other) => open.has(other))) return Number.MAX_SAFE_INTEGER;
  let stillOpen = waiting > 0 ? 1 : 0;
  for (const other of open) if (waitsForOthers(other, id, unplaced, neighbours)) stillOpen += 1;
  return stillOpen * 1000 + waiting;
}

/** Whether an open option still waits for another one than the one about to be placed. */
function waitsForOthers(other: string, id: string, unplaced: ReadonlySet<string>, neighbours: Neighbours): boolean {
  return [...(neighbours.get(other) ?? [])].some((next) => next !== id && unplaced.has(next));
}

function hasUnplaced(id: string, unplaced: ReadonlySet<string>, neighbours: Neighbours): boolean {
  return [...(neighbours.get(id) ?? [])].some((next) => unplaced.has(next));
}
