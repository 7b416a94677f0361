import { type BuildSet, type BuildSpace, buildsOf, type ConditionExpr } from '../../../server/src/core/builds';

/** One unit as received and as finished, what the bench finds of it, and the way that the work goes at each fork. */
export interface World {
  readonly variant: string;
  readonly finished: readonly string[];
  readonly received: readonly string[];
  readonly outcomes: ReadonlyMap<string, string>;
  /** By the number of the fork: the side way is taken. */
  readonly forks: readonly boolean[];
  /** The one build and outcome as a set; the forks are not in it. */
  readonly point: BuildSet;
}

/** Draws a whole number from 0 up to but not including `below`. */
export type Draw = (below: number) => number;

/** A generator of numbers that gives the same for the same seed (mulberry32, from memory). */
export function drawFrom(seed: number): Draw {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return Math.floor((((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below);
  };
}

/** Some worlds of a space, each once: all of them where `limit` trials meet all of them. */
export function someWorlds(space: BuildSpace, forkCount: number, limit: number, draw: Draw): World[] {
  const worlds = new Map<string, World>();
  for (let trial = 0; trial < limit * 2 && worlds.size < limit; trial += 1) {
    const world = oneWorld(space, forkCount, draw, trial);
    worlds.set(describeWorld(world), world);
  }
  return [...worlds.values()];
}

/** Goes down to one world by choosing, of what is left, one value after another. */
function oneWorld(space: BuildSpace, forkCount: number, draw: Draw, trial: number): World {
  const builds = buildsOf(space.everything, space, 64);
  const build = builds[trial < builds.length ? trial : draw(builds.length)];
  if (build === undefined) throw new Error('A space without a build');
  let point = within(space, space.everything, { kind: 'is', id: build.variant }, true);
  const received: string[] = [];
  for (const id of space.facts.options.keys()) {
    point = within(space, point, { kind: 'is', id }, build.finished.includes(id));
  }
  for (const id of space.facts.options.keys()) {
    const came = chooseBoolean(space, point, { kind: 'arrives', id }, draw);
    point = within(space, point, { kind: 'arrives', id }, came);
    if (came) received.push(id);
  }
  const outcomes = new Map<string, string>();
  for (const { id, values } of space.facts.outcomes.values()) {
    const possible = values.filter((value) => point.overlaps(space.set({ kind: 'outcome', name: id, value })));
    const value = possible[draw(possible.length)];
    if (value === undefined) continue;
    point = point.and(space.set({ kind: 'outcome', name: id, value }));
    outcomes.set(id, value);
  }
  const forks = Array.from({ length: forkCount }, () => draw(2) === 1);
  return { variant: build.variant, finished: build.finished, received, outcomes, forks, point };
}

/** A family without variants has one kind of unit, which no condition names. */
function within(space: BuildSpace, point: BuildSet, expr: ConditionExpr, holds: boolean): BuildSet {
  if (expr.kind === 'is' && expr.id === '') return point;
  const set = space.set(expr);
  const narrowed = holds ? point.and(set) : point.minus(set);
  if (narrowed.isEmpty) throw new Error(`No build is left at ${JSON.stringify(expr)}`);
  return narrowed;
}

function chooseBoolean(space: BuildSpace, point: BuildSet, expr: ConditionExpr, draw: Draw): boolean {
  const set = space.set(expr);
  if (point.isWithin(set)) return true;
  return point.overlaps(set) && draw(2) === 1;
}

/** Whether a set of builds and outcomes, in which no fork is looked at, holds in a world. */
export function holdsIn(set: BuildSet, world: World): boolean {
  return world.point.isWithin(set);
}

/** The world as a person would name it. */
export function describeWorld({ variant, finished, received, outcomes, forks }: World): string {
  const found = [...outcomes].map(([id, value]) => `${id}=${value}`);
  const arrived = received.map((id) => `arrives=${id}`);
  const ways = forks.flatMap((taken, index) => (taken ? [`fork ${index}`] : []));
  return [variant, ...finished, ...arrived, ...found, ...ways].join(' ');
}
