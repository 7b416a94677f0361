import type { LaidStep } from './walkPlan';

/** Where the steps begin that are laid out already; looked through only when somebody asks. */
export class Beginnings {
  readonly #places = new Map<string, number>();
  #seen = 0;

  constructor(readonly steps: readonly LaidStep[]) {}

  of(id: string): number | undefined {
    for (; this.#seen < this.steps.length; this.#seen++) {
      const step = this.steps[this.#seen];
      if (step !== undefined && !this.#places.has(step.view.id)) this.#places.set(step.view.id, this.#seen);
    }
    return this.#places.get(id);
  }
}
