import { namedRefs } from '../analysis/instructions';
import type { BuildSet } from '../builds';
import type { ItemRange } from '../syntax/node';
import type { Cause, Deed, Failure, Happening } from './failure';
import { PREMISES } from './premise';
import type { Walked } from './rewalk';
import type { Found } from './walker';
import type { PlanEntry } from './walkPlan';

/** Failures of one instruction alone, whatever was done before it. */
const CERTAIN: ReadonlySet<Cause> = new Set(['cleaning-forbidden', 'loop-broken']);

/** Failures that anything done to one of several parts may put right, whatever was done last. */
const UNSURE: ReadonlySet<Cause> = new Set(['set-mixed']);

/** Everything that fails, in the order in which it shows, with what is to blame; one cause is told once. */
export function failuresOf(walked: Walked): Failure[] {
  return new Telling(walked).all();
}

/** Deeds that make what depends on a part worthless. */
const TOUCHES: readonly Deed[] = ['fitted', 'removed', 'loosened', 'tightened', 'seated', 'adjusted'];

class Telling {
  readonly #failures: Failure[] = [];
  /** What was told before, by what is to blame for it and when that happened. */
  readonly #told = new Map<string, BuildSet>();
  #byPart: ReadonlyMap<string, readonly number[]> | undefined;
  readonly #places = new Map<ItemRange, number>();
  /** Where the finding of each loop stands among the failures. */
  readonly #brokenLoops = new Map<number, number>();
  /** Place of the last instruction that could not be resolved: nobody knows what it would have done. */
  #unresolved = -1;

  constructor(readonly walked: Walked) {}

  all(): Failure[] {
    const { plan, steps, end } = this.walked;
    for (const [index, step] of steps.entries()) {
      const entry = plan.entries[index];
      if (entry?.is === 'gap' || (entry?.is === 'act' && !entry.resolved)) this.#unresolved = index;
      for (const found of step.found) this.#tell(found, index, entry);
    }
    for (const found of end.found) this.#tell(found, steps.length, undefined);
    return this.#failures;
  }

  #tell(found: Found, index: number, entry: PlanEntry | undefined): void {
    const failure = this.#failure(found, index, placeOf(entry, found.about, found.asked));
    // What an unresolved instruction may have put right is not told.
    const before = failure.because?.index ?? -1;
    if (this.#unresolved >= 0 && (before < this.#unresolved || UNSURE.has(found.cause)) && !CERTAIN.has(found.cause))
      return;
    if (this.#wasTold(failure)) return;
    if (entry?.is === 'act' && entry.loop !== undefined) this.#tellLoop(failure, entry.loop);
    else this.#failures.push(failure);
  }

  /** What rests on the same as something told before is not told, nor the same thing at the same place again. */
  #wasTold(failure: Failure): boolean {
    const { cause, about, other, where, at } = failure;
    const keys = [`${cause} ${about} ${other ?? ''} ${this.#placeNumber(at)}`, ...this.#premiseOf(failure)];
    const told = keys.some((key) => {
      const known = this.#told.get(key);
      return known !== undefined && where.isWithin(known);
    });
    for (const key of keys) this.#told.set(key, this.#told.get(key)?.or(where) ?? where);
    return told;
  }

  #premiseOf({ cause, about, other, where, index }: Failure): string[] {
    const premise = PREMISES[cause];
    const part = premise?.of === 'other' ? other : about;
    if (premise === undefined || part === undefined) return [];
    return [`${part} ${premise.is} ${this.#lastTime(index, part, premise.since, where)?.index ?? 'from the start'}`];
  }

  /** Entries that are walked twice stand at one place. */
  #placeNumber(at: ItemRange | undefined): number {
    if (at === undefined) return -1;
    const number = this.#places.get(at) ?? this.#places.size;
    this.#places.set(at, number);
    return number;
  }

  /** The first thing that fails the second time round stands for the loop, wherever anything does. */
  #tellLoop(within: Failure, loop: number): void {
    const told = this.walked.plan.loops[loop];
    if (told === undefined) return;
    const { where, index, because } = within;
    const known = this.#brokenLoops.get(loop);
    const before = known === undefined ? undefined : this.#failures[known];
    if (known !== undefined && before !== undefined) {
      this.#failures[known] = { ...before, where: before.where.or(where) };
      return;
    }
    this.#brokenLoops.set(loop, this.#failures.length);
    this.#failures.push({
      cause: 'loop-broken',
      about: told.target,
      other: undefined,
      where,
      at: told.at,
      index,
      because,
      undone: undefined,
      within,
    });
  }

  #failure({ cause, about, other, where, blame }: Found, index: number, at: ItemRange | undefined): Failure {
    const because = blame === undefined ? undefined : this.#lastTime(index, blame.part, blame.deeds, where);
    const undone = because?.what === 'measured' ? this.#undoing(index, about, where, because.index) : undefined;
    return { cause, about, other, where, at, index, because, undone, within: undefined };
  }

  /** The last touch of what a result depends on, after it was made. */
  #undoing(before: number, result: string, where: BuildSet, since: number): Happening | undefined {
    const causes = this.walked.plan.unit.relations.causesOf(result);
    const touches = causes.flatMap((part) => this.#lastTime(before, part, TOUCHES, where) ?? []);
    return touches.filter(({ index }) => index > since).sort((a, b) => b.index - a.index)[0];
  }

  /** The last time, before an instruction, that one of these deeds was done to a part for some of the builds. */
  #lastTime(before: number, part: string, deeds: readonly string[], where: BuildSet): Happening | undefined {
    this.#byPart ??= stepsByPart(this.walked);
    const { plan, steps } = this.walked;
    const indexes = this.#byPart.get(part) ?? [];
    for (let i = indexes.length - 1; i >= 0; i--) {
      const index = indexes[i] ?? 0;
      if (index >= before) continue;
      const match = steps[index]?.done.findLast(
        ({ part: own, what, where: there }) => own === part && deeds.includes(what) && there.overlaps(where),
      );
      const at = match === undefined ? undefined : placeOf(plan.entries[index], part);
      if (match !== undefined && at !== undefined) return { ...match, at, index };
    }
    return undefined;
  }
}

/** The entries that did something to each part, in order. */
function stepsByPart({ steps }: Walked): ReadonlyMap<string, readonly number[]> {
  const byPart = new Map<string, number[]>();
  for (const [index, { done }] of steps.entries()) {
    for (const { part } of done) {
      const list = byPart.get(part);
      if (list === undefined) byPart.set(part, [index]);
      else if (list.at(-1) !== index) list.push(index);
    }
  }
  return byPart;
}

/**
 * Where an entry names the part, or one of its conditions, or where it stands. Only the plan says so, for what an entry
 * did may be older than its place.
 */
function placeOf(entry: PlanEntry | undefined, part: string, asked?: number): ItemRange | undefined {
  if (entry === undefined || entry.is === 'gap') return undefined;
  if (entry.is === 'lost-loop') return entry.at;
  if (asked !== undefined) return entry.asked[asked]?.at;
  return namedRefs(entry.instruction).find((ref) => ref.id === part)?.range ?? entry.at;
}
