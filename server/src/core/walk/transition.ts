import { atTheEnd } from './atTheEnd';
import { carryOut } from './carryOut';
import { reportUndecided } from './decisions';
import { startOf } from './start';
import type { Done, Found, Walker } from './walker';
import type { PlanEntry, WalkPlan } from './walkPlan';
import type { Footprint } from './walkState';

/**
 * What one entry of the plan did: the cells that it read, what it changed, what failed and what was done to which part.
 * It depends on the entry and on the cells that it read alone, so it holds again wherever those are the same.
 */
export interface Transition extends Footprint {
  readonly found: readonly Found[];
  readonly done: readonly Done[];
}

const NOTHING: Transition = { reads: [], changes: [], found: [], done: [] };

export function startTransition(walker: Walker): Transition {
  startOf(walker);
  return taken(walker);
}

export function entryTransition(walker: Walker, entry: PlanEntry): Transition {
  if (entry.is === 'gap') return NOTHING;
  if (entry.is === 'lost-loop') {
    walker.fail('loop-broken', entry.target, entry.where);
    return taken(walker);
  }
  if (entry.where.isEmpty) return NOTHING;
  reportUndecided(walker, entry, entry.asked);
  carryOut(walker, entry);
  return taken(walker);
}

export function endTransition(walker: Walker, plan: WalkPlan): Transition {
  if (!plan.whole) return NOTHING;
  atTheEnd(walker, plan.alive);
  return taken(walker);
}

function taken(walker: Walker): Transition {
  const { found, done } = walker;
  walker.found = [];
  walker.done = [];
  const { reads, changes } = walker.state.takeFootprint();
  return { reads, changes, found, done };
}
