import type { BuildSet } from '../builds';
import type { ItemRange } from '../syntax/node';
import type { Cause, Deed, Failure, Happening } from './failure';
import { PREMISES } from './premise';
import type { Walked } from './rewalk';
import type { Found } from './walker';
import type { Loop, PlanEntry } from './walkPlan';

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
  readonly #places = new Map<ItemRange, number>();
  /** Where the finding of each loop stands among the failures. */
  readonly #brokenLoops = new Map<Loop, number>();
  /** The place in the walk at which each stretch begins, of those that were gone through. */
  readonly #begins: number[] = [];
  /** Place of the last instruction that could not be resolved: nobody knows what it would have done. */
  #unresolved = -1;

  constructor(readonly walked: Walked) {}

  all(): Failure[] {
    let begin = 0;
    for (const { work } of this.walked.stretches) {
      this.#begins.push(begin);
      const before = this.#unresolved;
      for (const { found, place, at, unresolved } of work.found) {
        this.#unresolved = unresolved < 0 ? before : begin + unresolved;
        this.#tell(found, begin + place, at, loopOf(work.entries[place]));
      }
      this.#unresolved = work.unresolved < 0 ? before : begin + work.unresolved;
      begin += work.length;
    }
    for (const found of this.walked.end.found) this.#tell(found, begin, undefined, undefined);
    return this.#failures;
  }

  #tell(found: Found, index: number, at: ItemRange | undefined, loop: Loop | undefined): void {
    const failure = this.#failure(found, index, at);
    // What an unresolved instruction may have put right is not told.
    const before = failure.because?.index ?? -1;
    if (this.#unresolved >= 0 && (before < this.#unresolved || UNSURE.has(found.cause)) && !CERTAIN.has(found.cause))
      return;
    if (this.#wasTold(failure)) return;
    if (loop !== undefined) this.#tellLoop(failure, loop);
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
  #tellLoop(within: Failure, loop: Loop): void {
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
      about: loop.target,
      other: undefined,
      where,
      at: loop.at,
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

  /**
   * The last time, before an instruction, that one of these deeds was done to a part for some of the builds. Only what
   * was gone through already comes before it.
   */
  #lastTime(before: number, part: string, deeds: readonly string[], where: BuildSet): Happening | undefined {
    const { stretches } = this.walked;
    for (let i = this.#begins.length - 1; i >= 0; i--) {
      const { work } = stretches[i] ?? {};
      const begin = this.#begins[i] ?? 0;
      const all = work?.deedsTo(part) ?? [];
      for (let k = all.length - 1; k >= 0; k--) {
        const here = all[k];
        if (here === undefined || begin + here.place >= before) continue;
        const match = here.done.findLast(({ what, where: there }) => deeds.includes(what) && there.overlaps(where));
        const at = match === undefined ? undefined : here.at;
        if (match !== undefined && at !== undefined) return { ...match, at, index: begin + here.place };
      }
    }
    return undefined;
  }
}

function loopOf(entry: PlanEntry | undefined): Loop | undefined {
  return entry?.is === 'act' ? entry.loop : undefined;
}
