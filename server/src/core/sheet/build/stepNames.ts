import type { ProcedureView, StepView } from '../../analysis/procedureView';
import type { PlannedStep } from './plannedSteps';

/** What an id means as that of a step: its number on the sheet, and the step itself, which another build may have. */
export interface StepAnswer {
  readonly number: number | undefined;
  readonly view: StepView | undefined;
}

/**
 * Which step an id means. What is asked while a step is written can be written down: the step has to be written anew once
 * an answer is another one.
 */
export class StepNames {
  /** Numbers of the steps that are on the sheet, by id. */
  readonly numbers: ReadonlyMap<string, number>;
  readonly #views = new Map<string, StepView>();
  #asked: Map<string, StepAnswer> | undefined;

  constructor(procedure: ProcedureView, planned: readonly PlannedStep[]) {
    this.numbers = new Map(planned.map((one) => [one.id, one.number]));
    for (const view of procedure.steps) if (!this.#views.has(view.id)) this.#views.set(view.id, view);
  }

  of(id: string): StepAnswer {
    const answer = this.#answer(id);
    this.#asked?.set(id, answer);
    return answer;
  }

  /** From now on all that is asked is written down there. */
  writeDown(asked: Map<string, StepAnswer> | undefined): void {
    this.#asked = asked;
  }

  /** Whether everything that was asked would be answered the same. */
  answersAs(asked: ReadonlyMap<string, StepAnswer>): boolean {
    for (const [id, { number, view }] of asked) {
      const now = this.#answer(id);
      if (now.number !== number || now.view !== view) return false;
    }
    return true;
  }

  #answer(id: string): StepAnswer {
    return { number: this.numbers.get(id), view: this.#views.get(id) };
  }
}
