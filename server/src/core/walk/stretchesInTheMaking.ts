import type { CellTable } from './cellTable';
import { PlacedStretch, StretchWork, type Values } from './stretch';
import type { WalkedStep } from './walkedStep';

/** How many steps a stretch has where all are walked; and how few and how many it may come to have by edits. */
const USUAL = 16;
const LEAST = 8;
const MOST = 32;

/** Puts the steps of a walk together to stretches, and takes those of an earlier walk as they are. */
export class StretchesInTheMaking {
  readonly #done: PlacedStretch[] = [];
  #steps: WalkedStep[] = [];
  #before: Values = [];
  readonly #most: number;

  constructor(
    readonly table: CellTable,
    isWhole: boolean,
  ) {
    this.#most = isWhole ? USUAL : MOST;
  }

  /** So few steps have come together that what follows is better put to them. */
  get isTooShort(): boolean {
    return this.#steps.length > 0 && this.#steps.length < LEAST;
  }

  /** A step is about to be walked; `here` says how the unit stands before it. */
  begin(here: () => Values): void {
    if (this.#steps.length >= this.#most) this.#end();
    if (this.#steps.length === 0) this.#before = here();
  }

  add(step: WalkedStep): void {
    this.#steps.push(step);
  }

  take(stretch: PlacedStretch, before: Values): void {
    this.#end();
    this.#place(stretch, before);
  }

  /** A stretch of the earlier walk ends here. Where all that it did was taken over, the same work stands here. */
  endNear(stretch: PlacedStretch): void {
    const { steps } = stretch.work;
    if (steps.length === this.#steps.length && steps.every((step, i) => step === this.#steps[i])) {
      this.#place(stretch, this.#before);
      this.#steps = [];
    } else if (!this.isTooShort) this.#end();
  }

  all(): readonly PlacedStretch[] {
    this.#end();
    return this.#done;
  }

  #place(stretch: PlacedStretch, before: Values): void {
    this.#done.push(before === stretch.before ? stretch : new PlacedStretch(stretch.work, before, this.table));
  }

  #end(): void {
    if (this.#steps.length === 0) return;
    this.#done.push(new PlacedStretch(new StretchWork(this.#steps), this.#before, this.table));
    this.#steps = [];
  }
}
