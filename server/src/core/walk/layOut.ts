import type { BuildSet } from '../builds';
import { Beginnings } from './beginnings';
import { commonEnds } from './commonEnds';
import { layOutStep } from './layOutStep';
import { areSameNames, type NamesKnown } from './namesKnown';
import { decidesAnything, neverRenewed } from './neverRenewed';
import { isWhole } from './resolved';
import type { Fork } from './trace';
import type { UnitModel } from './unitModel';
import type { BeforeStep, LaidStep, Span, WalkPlan } from './walkPlan';

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
    const names = unit.names;
    this.#names = earlier !== undefined && areSameNames(earlier.names, names) ? earlier.names : names;
    const then = earlier?.steps.map((one) => one.view) ?? [];
    this.#ends = commonEnds(unit.procedure.steps, then);
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

  #layOut(never: BuildSet): BuildSet {
    const { document, steps } = this.unit.procedure;
    const torn = new Set(document.problems.map((problem) => problem.range.item));
    let dead = never;
    for (const [index, view] of steps.entries()) {
      const isTorn = torn.size > 0 && torn.has(view.step.node.item);
      const before: BeforeStep = { names: this.#names, dead, forks: this.#forks.length, isTorn };
      const known = this.#before(index);
      const isSame = known !== undefined && this.#holds(known, before, index);
      const laid = isSame ? known : layOutStep(this.unit, view, before, this.#steps, this.#begins);
      this.#steps.push(laid);
      for (const fork of laid.forks) this.#forks.push(fork);
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
    const then = this.earlier?.steps ?? [];
    const [same, behind] = this.#ends;
    const { steps } = this.unit.procedure;
    if (index < same) return then[index];
    return index < steps.length - behind ? undefined : then[index - steps.length + then.length];
  }

  /** Whether a step would be laid out as it was. Where the forks before it are not as many, its own have other numbers. */
  #holds(known: LaidStep, before: BeforeStep, index: number): boolean {
    const was = known.before;
    if (was.dead !== before.dead || was.isTorn !== before.isTorn || !areSameNames(was.names, before.names))
      return false;
    if (was.forks !== before.forks && known.forks.length > 0) return false;
    if (known.isLost) return false;
    return index < this.#ends[0] || known.spans.every((span) => this.#isSameSpan(span, index));
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
