import { alignmentOf, type Segment } from './alignment';
import type { CellTable, CellValue } from './cellTable';
import { commonEnds } from './commonEnds';
import type { PlacedStretch, Values } from './stretch';
import { StretchesInTheMaking } from './stretchesInTheMaking';
import { endTransition, entryTransition, startTransition, type Transition } from './transition';
import { WalkedStep } from './walkedStep';
import { Walker } from './walker';
import { isSameEntry, isSameGround, type LaidStep, type PlanEntry, type WalkPlan } from './walkPlan';
import { isSameValue, type WalkState } from './walkState';

/** A plan with what each of its entries did, and the unit as it stood in between. */
export interface Walked {
  readonly plan: WalkPlan;
  readonly start: Transition;
  readonly stretches: readonly PlacedStretch[];
  /** The unit as it stands behind the last step. */
  readonly after: Values;
  readonly end: Transition;
  /** How many entries were carried out, and not taken over from an earlier walk. */
  readonly carriedOut: number;
}

/**
 * Walks a plan. Of an earlier walk on the same ground it takes over every entry that is as it was and reads nothing that
 * has become different; where neither is in question of a whole stretch, the stretch as one.
 */
export function rewalk(plan: WalkPlan, state: WalkState, earlier: Walked | undefined): Walked {
  const old = earlier !== undefined && isSameGround(earlier.plan, plan) ? earlier : undefined;
  return new Rewalk(plan, state, old).walk();
}

class Rewalk {
  readonly #walker: Walker;
  readonly #made: StretchesInTheMaking;
  /** The next step of the earlier walk: its stretch, and its place in that. */
  #stretch = 0;
  #within = 0;
  /** Cells whose value differs from that of the earlier walk at the same place, with the value that they have now. */
  readonly #different = new Map<number, CellValue | undefined>();
  /**
   * What the cells held in the earlier walk, while steps are gone through one by one. Undefined where a stretch begins and
   * nobody has looked into it: then the state has not been brought up to here either.
   */
  #then: (CellValue | undefined)[] | undefined;
  #carriedOut = 0;

  constructor(
    readonly plan: WalkPlan,
    readonly state: WalkState,
    readonly old: Walked | undefined,
  ) {
    this.#walker = new Walker(plan.unit, state);
    this.#made = new StretchesInTheMaking(state.table, old === undefined);
  }

  walk(): Walked {
    const { old, plan } = this;
    const start = old?.start ?? startOn(this.#walker);
    const steps = old?.plan.unit.procedure.steps ?? [];
    for (const segment of alignmentOf(plan.unit.procedure.steps, steps)) {
      if (segment.is === 'same') this.#same(segment.now, segment.before, segment.count);
      else this.#changed(segment);
    }
    const after = this.#here();
    const end = this.#end(after);
    return { plan, start, stretches: this.#made.all(), after, end, carriedOut: this.#carriedOut };
  }

  /** Steps that both walks have, though they need not be laid out alike. */
  #same(now: number, before: number, count: number): void {
    for (let i = 0; i < count; ) {
      const stretch = this.#wholeStretch(now + i, before + i, count - i);
      if (stretch === undefined) this.#again(this.plan.steps[now + i++]);
      else {
        this.#takeStretch(stretch);
        i += stretch.work.steps.length;
      }
    }
  }

  /** The next stretch of the earlier walk, where it can be taken over as it is. */
  #wholeStretch(now: number, before: number, most: number): PlacedStretch | undefined {
    const { old, plan } = this;
    const stretch = old?.stretches[this.#stretch];
    if (old === undefined || stretch === undefined || this.#within > 0 || this.#made.isTooShort) return undefined;
    const { length } = stretch.work.steps;
    if (length > most) return undefined;
    for (let i = 0; i < length; i++) if (plan.steps[now + i] !== old.plan.steps[before + i]) return undefined;
    if (this.#different.size === 0) return stretch;
    const { reads } = stretch.work;
    for (const cell of this.#different.keys()) if (reads.has(cell)) return undefined;
    return stretch;
  }

  #takeStretch(stretch: PlacedStretch): void {
    this.#made.take(stretch, this.#here());
    for (const cell of this.#different.keys()) if (stretch.work.writes.has(cell)) this.#different.delete(cell);
    this.#stretch++;
    this.#then = undefined;
  }

  /** What the cells hold here. Where a stretch begins and nothing differs, it is what the earlier walk has there. */
  #here(): Values {
    const { old } = this;
    if (old === undefined || this.#within > 0) return this.state.values.slice();
    const then = old.stretches[this.#stretch]?.before ?? old.after;
    if (this.#different.size === 0) return then;
    const now = then.slice();
    for (const [cell, value] of this.#different) now[cell] = value;
    return now;
  }

  /** From here on, step by step. */
  #lookInto(): void {
    const { old } = this;
    if (old === undefined || this.#then !== undefined) return;
    this.#then = (old.stretches[this.#stretch]?.before ?? old.after).slice();
    this.state.values = this.#here().slice();
  }

  /** A step that the earlier walk has as well. */
  #again(laid: LaidStep | undefined): void {
    this.#lookInto();
    const known = this.old?.stretches[this.#stretch]?.work.steps[this.#within];
    if (laid === undefined || known === undefined) return;
    if (known.laid === laid && !this.#readsDifferent(known)) {
      this.#made.begin(() => this.#here());
      for (const transition of known.transitions) this.#takeOver(transition);
      this.#made.add(known);
    } else this.#walkSteps([laid], [known]);
    this.#pass(1);
  }

  #readsDifferent({ transitions }: WalkedStep): boolean {
    return this.#different.size > 0 && transitions.some((one) => one.reads.some((cell) => this.#different.has(cell)));
  }

  /** Steps in the place of others. */
  #changed({ now, before }: Extract<Segment, { is: 'changed' }>): void {
    this.#lookInto();
    const gone: WalkedStep[] = [];
    const count = before[1] - before[0];
    for (let [stretch, within] = [this.#stretch, this.#within]; gone.length < count; within++) {
      const step = this.old?.stretches[stretch]?.work.steps[within];
      if (step !== undefined) gone.push(step);
      else [stretch, within] = [stretch + 1, -1];
    }
    this.#walkSteps(this.plan.steps.slice(...now), gone);
    this.#pass(count);
  }

  /** The earlier walk is followed over some steps; where one of its stretches ends, one may end here. */
  #pass(count: number): void {
    this.#within += count;
    for (;;) {
      const stretch = this.old?.stretches[this.#stretch];
      if (stretch === undefined || this.#within < stretch.work.steps.length) return;
      this.#within -= stretch.work.steps.length;
      this.#stretch++;
      if (this.#within === 0) this.#made.endNear(stretch);
    }
  }

  /** Walks steps that may hold entries of those in whose place they stand. */
  #walkSteps(steps: readonly LaidStep[], gone: readonly WalkedStep[]): void {
    if (gone.length === 0) {
      for (const laid of steps) this.#walkAnew(laid);
      return;
    }
    const before = gone.flatMap((one) => one.laid.entries);
    const old = gone.flatMap((one) => one.transitions);
    const meet = meetingOf(
      steps.flatMap((one) => one.entries),
      before,
    );
    let [place, passed] = [0, 0];
    const passTo = (end: number): void => {
      for (; passed < end; passed++) this.#wasDone(old[passed]);
    };
    for (const laid of steps) {
      this.#made.begin(() => this.#here());
      const transitions = laid.entries.map((entry) => {
        const other = meet(place++);
        passTo(other.from);
        if (other.is === 'other') return this.#carryOut(entry);
        passed++;
        return this.#entryAgain(entry, old[other.from]);
      });
      this.#made.add(new WalkedStep(laid, transitions, this.state.table));
    }
    passTo(old.length);
  }

  /** A step in whose place nothing stood. */
  #walkAnew(laid: LaidStep): void {
    this.#made.begin(() => this.#here());
    const transitions = laid.entries.map((entry) => this.#carryOut(entry));
    this.#made.add(new WalkedStep(laid, transitions, this.state.table));
  }

  /** An entry that is as it was: carried out again only where it reads what has become different. */
  #entryAgain(entry: PlanEntry, old: Transition | undefined): Transition {
    if (old !== undefined && !old.reads.some((cell) => this.#different.has(cell))) {
      this.#takeOver(old);
      return old;
    }
    this.#wasDone(old);
    return this.#carryOut(entry);
  }

  #carryOut(entry: PlanEntry): Transition {
    const transition = entryTransition(this.#walker, entry);
    this.#carriedOut++;
    for (const { cell } of transition.changes) this.#compare(cell);
    return transition;
  }

  /** The earlier walk goes on by a transition that this one does not take over. */
  #wasDone(transition: Transition | undefined): void {
    if (transition === undefined || this.#then === undefined) return;
    for (const { cell, value } of transition.changes) {
      this.#then[cell] = value;
      this.#compare(cell);
    }
  }

  #takeOver(transition: Transition): void {
    for (const { cell, value } of transition.changes) {
      this.state.values[cell] = value;
      if (this.#then !== undefined) this.#then[cell] = value;
      this.#different.delete(cell);
    }
  }

  #compare(cell: number): void {
    if (this.#then === undefined) return;
    const value = this.state.values[cell];
    if (isSameValue(value, this.#then[cell])) this.#different.delete(cell);
    else this.#different.set(cell, value);
  }

  #end(after: Values): Transition {
    const { old, plan } = this;
    const isSame = old !== undefined && old.plan.whole === plan.whole && old.plan.alive === plan.alive;
    if (isSame && !old.end.reads.some((cell) => this.#different.has(cell))) return old.end;
    this.state.values = after.slice();
    return endTransition(this.#walker, plan);
  }
}

/** How a unit stands at the start, by what the procedure starts with; cells are numbered for one family and its builds. */
const startsOf = new WeakMap<CellTable, Map<string, Transition>>();

/** Brings the unit to where the procedure starts, as the procedures before it did that start with the same. */
function startOn(walker: Walker): Transition {
  const { state, unit } = walker;
  const starts = startsOf.get(state.table) ?? new Map<string, Transition>();
  startsOf.set(state.table, starts);
  const id = unit.procedure.value.starts?.id ?? '';
  const known = starts.get(id);
  if (known !== undefined) {
    for (const { cell, value } of known.changes) state.values[cell] = value;
    return known;
  }
  const start = startTransition(walker);
  starts.set(id, start);
  return start;
}

/** Which entry of the earlier walk an entry meets, or before which it is carried out. */
type Met = { readonly is: 'same' | 'other'; readonly from: number };

/** Where some entries meet others: those at both ends, and those between by their places where they are as many. */
function meetingOf(now: readonly PlanEntry[], then: readonly PlanEntry[]): (place: number) => Met {
  const [same, behind] = commonEnds(now, then, isSameEntry);
  const shift = then.length - now.length;
  return (place) => {
    if (place < same) return { is: 'same', from: place };
    if (place >= now.length - behind) return { is: 'same', from: place + shift };
    if (shift !== 0) return { is: 'other', from: then.length - behind };
    return isSameEntry(now[place], then[place]) ? { is: 'same', from: place } : { is: 'other', from: place + 1 };
  };
}
