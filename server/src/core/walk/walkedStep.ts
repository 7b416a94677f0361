import type { CellTable } from './cellTable';
import type { Lane } from './lane';
import type { Moment } from './trace';
import type { Transition } from './transition';
import type { LaidStep } from './walkPlan';

/** A step as it was walked: what each of its entries did. */
export class WalkedStep {
  #moments: readonly Moment[] | undefined;

  constructor(
    readonly laid: LaidStep,
    readonly transitions: readonly Transition[],
    readonly table: CellTable,
  ) {}

  get moments(): readonly Moment[] {
    this.#moments ??= this.transitions.flatMap((transition, place) => this.#moment(transition, place));
    return this.#moments;
  }

  #moment(transition: Transition, place: number): Moment[] {
    const entry = this.laid.entries[place];
    if (entry?.is !== 'act') return [];
    const { step, instruction, where, at, loop } = entry;
    const { reads, changes, done } = transition;
    const made = done.flatMap((one) => (one.what === 'measured' ? [one.part] : []));
    const lanes = lanesIn(transition, this.table);
    return [{ step, instruction, where, at, again: loop !== undefined, lanes, made, reads, changes }];
  }
}

/** The lanes that a transition changed, by part. */
function lanesIn({ changes }: Transition, { names }: CellTable): ReadonlyMap<string, Lane> {
  const lanes = new Map<string, Lane>();
  for (const { cell, value } of changes) {
    const name = names[cell];
    if (name?.kind === 'lane') lanes.set(name.id, value as Lane);
  }
  return lanes;
}
