import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { ItemRange } from '../syntax/node';
import type { Cause, Failure, Happening } from './failure';
import type { UnitModel } from './unitModel';
import { WalkState } from './walkState';

/** An instruction as it is carried out: where it stands and for which builds. */
export interface Act {
  readonly instruction: Instruction;
  readonly where: BuildSet;
  readonly at: ItemRange;
  readonly index: number;
}

export interface FailureDetails {
  readonly at?: ItemRange | undefined;
  readonly other?: string;
  readonly because?: Happening | undefined;
}

/** Failures of one instruction alone, whatever was done before it. */
const CERTAIN: ReadonlySet<Cause> = new Set(['cleaning-forbidden']);

/** What the verbs work with: the state of the unit, and the means to report and to remember what happened. */
export class Walker {
  readonly state: WalkState;
  readonly failures: Failure[] = [];
  readonly #happenings = new Map<string, Happening[]>();
  /** What was told before, by what is to blame for it and when that happened. */
  readonly #told = new Map<string, BuildSet>();
  /** Place of the last instruction that could not be resolved: nobody knows what it would have done. */
  #unresolved = -1;

  constructor(readonly unit: UnitModel) {
    this.state = new WalkState(unit);
  }

  /**
   * Reports a failure where the set holds anything; gives back whether it does. What an unresolved instruction may have
   * put right, and what has the same cause as something told before, is not told.
   */
  fail(cause: Cause, about: string, where: BuildSet, details: FailureDetails = {}): boolean {
    if (where.isEmpty) return false;
    const { at, other, because } = details;
    if (this.#unresolved >= 0 && (because?.index ?? -1) < this.#unresolved && !CERTAIN.has(cause)) return true;
    const key = other === undefined ? undefined : `${other} ${because?.index ?? 'from the start'}`;
    const told = key === undefined ? undefined : this.#told.get(key);
    if (told !== undefined && where.isWithin(told)) return true;
    if (key !== undefined) this.#told.set(key, told?.or(where) ?? where);
    this.failures.push({ cause, about, other, where, at, because });
    return true;
  }

  /** An instruction that is half typed or names what does not exist. */
  skipped(index: number): void {
    this.#unresolved = index;
  }

  happened(what: Happening['what'], part: string, act: Act): void {
    const list = this.#happenings.get(part) ?? [];
    list.push({ what, part, where: act.where, at: act.at, index: act.index });
    this.#happenings.set(part, list);
  }

  /** The last time that one of these things happened to a part, for some of the builds. */
  lastTime(part: string, whats: readonly Happening['what'][], where: BuildSet): Happening | undefined {
    return this.#happenings.get(part)?.findLast((one) => whats.includes(one.what) && one.where.overlaps(where));
  }

  /** A part was turned, moved or taken off: results that depend on it are worth nothing any more. */
  touched(part: string, where: BuildSet): void {
    for (const id of this.unit.resultsOn(part)) this.state.voidResult(id, where);
  }

  /** The builds of an act in which the part can be there at all; elsewhere the act says nothing about it. */
  meant(part: string, act: Act): BuildSet {
    return act.where.and(this.unit.everPresent(part));
  }
}
