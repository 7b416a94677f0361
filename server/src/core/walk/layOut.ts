import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import { Beginnings } from './beginnings';
import { commonEnds } from './commonEnds';
import { layOutStep } from './layOutStep';
import { areSameNames, type NamesKnown } from './namesKnown';
import { decidesAnything, neverRenewed } from './neverRenewed';
import { isWhole } from './resolved';
import type { Fork } from './trace';
import type { UnitModel } from './unitModel';
import type { LaidStep, Span, WalkPlan } from './walkPlan';

/**
 * Lays out the walk of a procedure: its instructions in the order in which they come, on every way. What the last plan of
 * the same procedure laid out, and nothing has changed for, is taken over step by step.
 */
export function planOf(unit: UnitModel, earlier: WalkPlan | undefined): WalkPlan {
  return new Layout(unit, earlier?.unit.space === unit.space ? earlier : undefined).plan();
}

class Layout {
  readonly #steps: LaidStep[] = [];
  readonly #forks: Fork[] = [];
  readonly #names: NamesKnown;
  /** How many steps at the beginning and at the end are those of the last plan. */
  readonly #ends: readonly [number, number];
  readonly #begins: Beginnings;
  /** The ids of the steps that the last plan did not have, or had elsewhere. */
  #newIds: ReadonlySet<string> | undefined;

  constructor(
    readonly unit: UnitModel,
    readonly earlier: WalkPlan | undefined,
  ) {
    const { names } = unit;
    this.#names = earlier !== undefined && areSameNames(earlier.names, names) ? earlier.names : names;
    this.#ends = commonEnds(unit.procedure.steps, earlier?.unit.procedure.steps ?? []);
    this.#begins = new Beginnings(this.#steps);
  }

  plan(): WalkPlan {
    const { unit } = this;
    const { procedure, space } = unit;
    const never = this.#never();
    const dead = this.#layOut(never);
    const { starts, ends } = procedure.value;
    return {
      unit,
      steps: this.#steps,
      forks: this.#forks,
      names: this.#names,
      never,
      alive: space.everything.minus(dead),
      whole: isWhole(unit, this.#steps),
      startsAndEnds: `${starts?.id} ${ends?.id}`,
      stores: [...new Set([...procedure.consumables.values()].map((item) => item.document))],
    };
  }

  /** This is gone through for every step after each key, so nothing is made for a step that is taken over. */
  #layOut(never: BuildSet): BuildSet {
    const { document, steps } = this.unit.procedure;
    const torn = new Set(document.problems.map((problem) => problem.range.item));
    let dead = never;
    for (let index = 0; index < steps.length; index++) {
      const view = steps[index] as StepView;
      const isTorn = torn.size > 0 && torn.has(view.step.node.item);
      let laid = this.#before(index);
      if (laid === undefined || laid.dead !== dead || laid.isTorn !== isTorn || !this.#holds(laid, index)) {
        const before = { names: this.#names, dead, forksBefore: this.#forks.length, isTorn };
        laid = layOutStep(this.unit, view, before, this.#steps, this.#begins);
      }
      this.#steps.push(laid);
      if (laid.forks.length > 0) this.#forks.push(...laid.forks);
      dead = laid.deadAfter;
    }
    return dead;
  }

  /** The ways that are never taken, as they were where no step has changed that has any say in it. */
  #never(): BuildSet {
    const { earlier, unit } = this;
    if (earlier === undefined) return neverRenewed(unit);
    const [same, behind] = this.#ends;
    const { steps } = unit.procedure;
    const come = steps.slice(same, steps.length - behind);
    const gone = earlier.steps.slice(same, earlier.steps.length - behind).map((one) => one.view);
    return [...come, ...gone].some(decidesAnything) ? neverRenewed(unit) : earlier.never;
  }

  /** What a step was laid out as in the last plan. */
  #before(index: number): LaidStep | undefined {
    const { earlier } = this;
    if (earlier === undefined) return undefined;
    const [same, behind] = this.#ends;
    if (index < same) return earlier.steps[index];
    const left = this.unit.procedure.steps.length - index;
    return left > behind ? undefined : earlier.steps[earlier.steps.length - left];
  }

  /** Whether a step would be laid out as it was. Where the forks before it are not as many, its own have other numbers. */
  #holds(laid: LaidStep, index: number): boolean {
    if (laid.isLost || !areSameNames(laid.names, this.#names)) return false;
    if (laid.forks.length > 0 && laid.forksBefore !== this.#forks.length) return false;
    if (laid.spans.length === 0 || index < this.#ends[0]) return true;
    return laid.spans.every((span) => this.#isSameSpan(span, index));
  }

  #isSameSpan({ target, steps }: Span, index: number): boolean {
    const from = index - steps.length;
    return from >= 0 && steps.every((one, i) => one === this.#steps[from + i]) && !this.#isNewId(target);
  }

  /** The first step of an id is meant, so one that has come to stand before it would be. */
  #isNewId(id: string): boolean {
    const [same, behind] = this.#ends;
    const { steps } = this.unit.procedure;
    this.#newIds ??= new Set(steps.slice(same, steps.length - behind).map((one) => one.id));
    return this.#newIds.has(id);
  }
}
