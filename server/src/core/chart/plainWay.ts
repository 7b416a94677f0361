import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import { RE_USED } from '../builds';
import type { Trace } from '../walk/trace';

/** One way that the work can go on a build, and what had to be taken for granted to name one. */
export interface PlainWay {
  readonly set: BuildSet;
  /** Each in words, only where the chart would look different otherwise. */
  readonly assumed: readonly string[];
}

interface Narrowing {
  readonly set: BuildSet;
  readonly decided: ReadonlyMap<string, string>;
}

/**
 * Of everything that a build leaves open, the plain way: the unit comes without what the work may add, parts are used
 * again, an outcome has its first value, optional steps are done and every result is right at once.
 */
export function plainWay(procedure: ProcedureView, trace: Trace, picked: BuildSet): PlainWay {
  const arrived = arrivals(procedure, { set: picked, decided: new Map() });
  const { set, decided } = outcomes(procedure, arrived);
  const plain = trace.forks.reduce((left, fork) => within(left, procedure.space.fork(fork.index).complement()), set);
  const seen = aspectsSeen(procedure, trace, picked);
  const assumed = [...decided].flatMap(([key, words]) => (words !== '' && seen.has(key) ? [words] : []));
  return {
    set: plain,
    assumed: [...usedAgain(procedure, decided, seen), ...assumed, ...forkWords(procedure, trace, set)],
  };
}

/** The part of a set that meets a wish, or all of it where nothing does. */
function within(set: BuildSet, wish: BuildSet): BuildSet {
  const narrowed = set.and(wish);
  return narrowed.isEmpty ? set : narrowed;
}

function arrivals({ space }: ProcedureView, start: Narrowing): Narrowing {
  let { set } = start;
  const decided = new Map(start.decided);
  for (const { id, name } of space.facts.options.values()) {
    const comes = space.set({ kind: 'arrives', id });
    const open = set.overlaps(comes) && !set.isWithin(comes);
    if (open) decided.set(`arrival ${id}`, `the unit comes without the ${name === '' ? id : name}`);
    if (open) set = set.minus(comes);
  }
  return { set, decided };
}

function outcomes(procedure: ProcedureView, start: Narrowing): Narrowing {
  const { space } = procedure;
  let { set } = start;
  const decided = new Map(start.decided);
  for (const { id, name, values } of space.facts.outcomes.values()) {
    const value = values.find((one) => set.overlaps(space.set({ kind: 'outcome', name: id, value: one })));
    if (value === undefined) continue;
    const found = space.set({ kind: 'outcome', name: id, value });
    const isPart = value === RE_USED && procedure.family?.part(id) !== undefined;
    if (!set.isWithin(found)) decided.set(`outcome ${id}`, isPart ? '' : `the ${name === '' ? id : name} is ${value}`);
    set = set.and(found);
  }
  return { set, decided };
}

/** Parts that are used again are named together. */
function usedAgain(
  { family }: ProcedureView,
  decided: ReadonlyMap<string, string>,
  seen: ReadonlySet<string>,
): string[] {
  const keys = [...decided].flatMap(([key, words]) => (words === '' && seen.has(key) ? [key] : []));
  const names = keys.map((key) => family?.nameOf(key.slice('outcome '.length)) ?? key);
  if (names.length === 0) return [];
  return [`used again: ${names.join(', ')}`];
}

const MOST_FORKS = 3;

/** A few forks are told one by one; many would bury the rest. */
function forkWords({ space }: ProcedureView, { forks }: Trace, set: BuildSet): string[] {
  const open = forks.filter((fork) => set.overlaps(space.fork(fork.index)));
  if (open.length > MOST_FORKS) return ['every optional step is done and every result is right at once'];
  return open.map((fork) => fork.notTaken);
}

/** What the steps and the lanes look at, by kind and id: what is never looked at need not be told. */
function aspectsSeen({ space, steps }: ProcedureView, trace: Trace, picked: BuildSet): Set<string> {
  const sets = new Set<BuildSet>(
    steps.flatMap(({ where, instructions }) => [where, ...instructions.map((one) => one.where)]),
  );
  for (const { where, lanes } of trace.moments) {
    sets.add(where);
    for (const lane of lanes.values()) {
      for (const fact of Object.values(lane)) if (!(fact instanceof Map)) sets.add(fact as BuildSet);
    }
  }
  const seen = new Set<string>();
  for (const set of sets) {
    if (!set.overlaps(picked) || picked.isWithin(set)) continue;
    for (const aspect of space.aspectsOf(set)) if (aspect.kind !== 'variant') seen.add(`${aspect.kind} ${aspect.id}`);
  }
  return seen;
}
