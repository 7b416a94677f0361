import type { BuildSet } from '../../builds';
import type { Holding } from './holding';
import { inUnit, type Off, takeOutOfUnit } from './inUnit';
import type { Edge, Freed } from './knots';

/** Something to do with a part: to take it off, or to loosen it. */
export interface Task {
  readonly key: string;
  readonly part: string;
  readonly loosen: boolean;
}

/** How things stand: what is off and, following from it, what is in the unit. */
export interface Standing {
  readonly off: Off;
  readonly inside: ReadonlyMap<string, BuildSet>;
}

export interface Work<Why> {
  readonly tasks: readonly Task[];
  /** Where the task is not done yet. */
  left(task: Task, off: Off): BuildSet;
  /** Parts on whose being in place it depends whether the task can be done. */
  looksAt(task: Task): Iterable<string>;
  /** What the task waits for. Must only become less by what is done. */
  hindrances(task: Task, standing: Standing): readonly Edge<Why>[];
}

/**
 * Everything that can be done is done until nothing more can: what is left waits for ever, each for what it says. As
 * what is done stands in the way of nothing, it does not matter what is done first.
 */
export function whatIsLeft<Why>(holding: Holding, work: Work<Why>, freed: Freed): readonly Edge<Why>[] {
  const off = new Map<string, BuildSet>(freed);
  const lookers = lookersOf(work);
  for (let changed = true; changed; ) {
    const standing = { off, inside: inUnit(holding, off) };
    // Once nothing can be done any more, all is looked at again, as parts in a circle of carriers may have been left in.
    changed = false;
    const queue = new Set(work.tasks);
    for (const task of queue) {
      queue.delete(task);
      if (!carryOut(holding, work, task, standing)) continue;
      changed = true;
      for (const other of lookers.get(task.part) ?? []) queue.add(other);
    }
  }
  const standing = { off, inside: inUnit(holding, off) };
  return work.tasks.flatMap((task) => work.hindrances(task, standing));
}

/** Does a task where it can be done, and says whether anything was. */
function carryOut<Why>(
  holding: Holding,
  work: Work<Why>,
  task: Task,
  standing: { readonly off: Map<string, BuildSet>; readonly inside: Map<string, BuildSet> },
): boolean {
  const { off, inside } = standing;
  const left = work.left(task, off);
  if (left.isEmpty) return false;
  const blocked = holding.space.union(work.hindrances(task, standing).map(({ where }) => where));
  const done = left.minus(blocked);
  if (done.isEmpty) return false;
  off.set(task.key, (off.get(task.key) ?? holding.space.nothing).or(done));
  if (!task.loosen) takeOutOfUnit(holding, off, inside, task.part);
  return true;
}

/** The tasks that are to be looked at again when something was done to a part. */
function lookersOf(work: Work<unknown>): Map<string, Task[]> {
  const lookers = new Map<string, Task[]>();
  for (const task of work.tasks) {
    for (const part of new Set(work.looksAt(task))) {
      const known = lookers.get(part);
      if (known === undefined) lookers.set(part, [task]);
      else known.push(task);
    }
  }
  return lookers;
}
