import type { CalculationStep } from '../standards/calculation';

/** A line that is read as it stands: what is stated, where, and what follows. */
export interface WorkingRow {
  readonly label: string;
  readonly text: string;
}

/**
 * How a value was worked out, for a person who must believe it: in one screen, with the numbers in the formulas and the
 * source beside them. Nothing in it is filled in anywhere: what is computed is shown as computed.
 */
export interface Working {
  /** What it is about: "Torque of the compressor nut". */
  readonly title: string;
  /** The builds and outcomes for which it holds, in words; '' where it holds for all. */
  readonly builds: string;
  readonly rows: readonly WorkingRow[];
  /** The calculation, in the order in which it would be written on paper. */
  readonly steps: readonly CalculationStep[];
  /** Facts that the documents do not state and without which nothing can be said, as "the property class of the nut". */
  readonly missing: readonly string[];
  /** Standards and practices, as they are cited: "ISO 898-1:2013". */
  readonly sources: readonly string[];
}
