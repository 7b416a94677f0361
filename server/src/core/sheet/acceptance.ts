/**
 * Between which values something is accepted, in `unit`; an end that is open is absent. `stated` is a value without a
 * tolerance: nobody has said what else would do. Independent of the language of the sheet, so that whoever reads a filled
 * sheet judges by numbers and not by words.
 */
export type Acceptance = {
  /** Of `quantity`, for example `torque`. */
  dimension: string;
  unit: string;
  /** The unit that the sheet prints first, which a bare number is in. */
  printedUnit: string;
  /** As the sheet prints it, in one unit. */
  words: string;
  /** What the bench must find for this to hold, in words; absent where it always holds. */
  when?: string;
} & ({ kind: 'between'; lowest?: number; highest?: number } | { kind: 'stated'; value: number });
