import type { CellTable } from './cellTable';
import type { Lane } from './lane';
import type { Moment } from './trace';
import type { Transition } from './transition';
import type { LaidStep, PlanAct } from './walkPlan';

/** A step as it was walked: what each of its entries did. */
export class WalkedStep {
  #moments: readonly Moment[] | undefined;

  constructor(
    readonly laid: LaidStep,
    readonly transitions: readonly Transition[],
    readonly table: CellTable,
  ) {}

  get moments(): readonly Moment[] {
    this.#moments ??= this.#allMoments();
    return this.#moments;
  }

  #allMoments(): Moment[] {
    const moments: Moment[] = [];
    for (let place = 0; place < this.transitions.length; place++) {
      const entry = this.laid.entries[place];
      if (entry?.is === 'act') moments.push(this.#moment(entry, this.transitions[place] as Transition));
    }
    return moments;
  }

  #moment({ step, instruction, where, at, loop }: PlanAct, transition: Transition): Moment {
    const { reads, changes, done } = transition;
    const made: string[] = [];
    for (const one of done) if (one.what === 'measured') made.push(one.part);
    const lanes = lanesIn(transition, this.table);
    return { step, instruction, where, at, again: loop !== undefined, lanes, made, reads, changes };
  }
}

const NO_LANES: ReadonlyMap<string, Lane> = new Map();

/** The lanes that a transition changed, by part. */
function lanesIn({ changes }: Transition, { names }: CellTable): ReadonlyMap<string, Lane> {
  if (changes.length === 0) return NO_LANES;
  const lanes = new Map<string, Lane>();
  for (const { cell, value } of changes) {
    const name = names[cell];
    if (name?.kind === 'lane') lanes.set(name.id, value as Lane);
  }
  return lanes;
}
