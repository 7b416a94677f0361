import type { CellValue } from './cellTable';
import { endTransition, entryTransition, startTransition, type Transition } from './transition';
import { Walker } from './walker';
import { isSameEntry, isSameGround, type WalkPlan } from './walkPlan';
import { isSameValue, type WalkState } from './walkState';

/** A plan with what each of its entries did. */
export interface Walked {
  readonly plan: WalkPlan;
  readonly start: Transition;
  readonly steps: readonly Transition[];
  readonly end: Transition;
  /** How many entries were carried out, and not taken over from an earlier walk. */
  readonly carriedOut: number;
}

/**
 * Walks a plan. Of an earlier walk on the same ground it takes over the entries before the first change, and behind the
 * last one every entry that reads nothing that has become different.
 */
export function rewalk(plan: WalkPlan, state: WalkState, earlier: Walked | undefined): Walked {
  const old = earlier !== undefined && isSameGround(earlier.plan, plan) ? earlier : undefined;
  return new Rewalk(plan, state, old).walk();
}

class Rewalk {
  readonly #walker: Walker;
  readonly #steps: Transition[] = [];
  /** Cells whose value differs from that of the earlier walk at the same place, with the value that they had there. */
  readonly #dirty = new Map<number, CellValue | undefined>();
  #carriedOut = 0;

  constructor(
    readonly plan: WalkPlan,
    readonly state: WalkState,
    readonly old: Walked | undefined,
  ) {
    this.#walker = new Walker(plan.unit, state);
  }

  walk(): Walked {
    const start = this.old?.start ?? startTransition(this.#walker);
    if (this.old !== undefined) this.#apply(start);
    const [same, sameBehind] = this.#common();
    const { entries } = this.plan;
    for (let i = 0; i < same; i++) this.#takeOver(this.old?.steps[i]);
    this.#middle(same, sameBehind);
    const shift = (this.old?.plan.entries.length ?? 0) - entries.length;
    for (let i = entries.length - sameBehind; i < entries.length; i++) this.#again(i, this.old?.steps[i + shift]);
    return { plan: this.plan, start, steps: this.#steps, end: this.#end(), carriedOut: this.#carriedOut };
  }

  /** How many entries at the beginning and at the end are as they were. */
  #common(): [number, number] {
    if (this.old === undefined) return [0, 0];
    const [now, before] = [this.plan.entries, this.old.plan.entries];
    const most = Math.min(now.length, before.length);
    let same = 0;
    while (same < most && isSameEntry(now[same], before[same])) same++;
    let behind = 0;
    while (behind < most - same && isSameEntry(now[now.length - 1 - behind], before[before.length - 1 - behind]))
      behind++;
    return [same, behind];
  }

  #middle(same: number, behind: number): void {
    const { entries } = this.plan;
    for (const step of this.old?.steps.slice(same, this.old.steps.length - behind) ?? []) this.#wasChanged(step);
    for (let i = same; i < entries.length - behind; i++) this.#carryOut(i);
    this.#settle([...this.#dirty.keys()]);
  }

  /** An entry that is as it was: carried out again only where it reads what has become different. */
  #again(index: number, old: Transition | undefined): void {
    if (old !== undefined && !old.reads.some((cell) => this.#dirty.has(cell))) {
      this.#takeOver(old);
      return;
    }
    if (old !== undefined) this.#wasChanged(old);
    this.#carryOut(index);
    this.#settle([...this.#dirty.keys()]);
  }

  #carryOut(index: number): void {
    const entry = this.plan.entries[index];
    if (entry === undefined) return;
    const before = new Map<number, CellValue | undefined>();
    const step = entryTransition(this.#walker, entry);
    this.#carriedOut++;
    this.#steps.push(step);
    for (const { cell } of step.changes) before.set(cell, undefined);
    for (const cell of before.keys()) if (!this.#dirty.has(cell)) this.#dirty.set(cell, this.#before.get(cell));
    this.#apply(step);
  }

  /** The value of each cell as the earlier walk had it, as far as it was followed and is not dirty. */
  readonly #before = new Map<number, CellValue | undefined>();

  /** The earlier walk goes on by a step that this one does not take over. */
  #wasChanged(step: Transition): void {
    for (const { cell, value } of step.changes) this.#dirty.set(cell, value);
  }

  #takeOver(step: Transition | undefined): void {
    if (step === undefined) return;
    this.#steps.push(step);
    this.#apply(step);
  }

  #apply(step: Transition): void {
    for (const { cell, value } of step.changes) {
      this.state.values[cell] = value;
      if (!this.#dirty.has(cell)) this.#before.set(cell, value);
    }
  }

  /** Cells that have come to say the same again are not different any more. */
  #settle(cells: readonly number[]): void {
    for (const cell of cells) {
      if (!isSameValue(this.state.values[cell], this.#dirty.get(cell))) continue;
      this.#dirty.delete(cell);
      this.#before.set(cell, this.state.values[cell]);
    }
  }

  #end(): Transition {
    const { old, plan } = this;
    const isSame = old !== undefined && old.plan.whole === plan.whole && old.plan.alive === plan.alive;
    if (isSame && !old.end.reads.some((cell) => this.#dirty.has(cell))) return old.end;
    return endTransition(this.#walker, plan);
  }
}
