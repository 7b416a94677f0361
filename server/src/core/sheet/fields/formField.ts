import type { Acceptance } from '../acceptance';

/**
 * What a sheet asks the bench for, one entry for each box and blank, in the order of the page. The printed page shows
 * them as boxes and lines; in the fillable variant each becomes a field of the form, and whoever reads a filled sheet
 * back judges it by this list alone.
 */

/**
 * When a field must be filled in: always, never, or where every box that it stands under is ticked. A branch that the
 * bench did not take stays empty.
 */
export type Need =
  | { readonly kind: 'always' }
  | { readonly kind: 'never' }
  | { readonly kind: 'underTick'; readonly ticks: readonly string[] };

interface Common {
  /** The same in every printing of the same document: step, instruction and what it is, never a place on a page. */
  readonly name: string;
  /** For example `Step 44.2`, or the words of the table that it stands in. */
  readonly place: string;
  /** Id of the step; absent outside the steps. */
  readonly stepId?: string;
  /** What it is, in the language of the sheet, for example `Actual torque of the compressor nut`. */
  readonly what: string;
  readonly need: Need;
}

export type FormField = Common &
  (
    | { readonly kind: 'tick' }
    /** One of several boxes of which one is ticked; `group` is common to them. */
    | { readonly kind: 'choice'; readonly group: string; readonly question: string; readonly value: string }
    /**
     * A measured value; `unit` is the one that a bare number is in. Where the work may come back to it, `attempt` tells
     * the fields of one value apart, and the last one that is filled in counts.
     */
    | {
        readonly kind: 'value';
        readonly unit: string;
        readonly accepts: readonly Acceptance[];
        readonly attempt?: { readonly of: string; readonly number: number };
      }
    /** Words; `many` lines take what is said at length. */
    | { readonly kind: 'text'; readonly lines: 'one' | 'many' }
    | { readonly kind: 'signature' }
  );

/** Omits from each member of a union, where the library's own would melt the union into one. */
type Without<Union, Key extends PropertyKey> = Union extends unknown ? Omit<Union, Key> : never;

/** A field before it has its name for good. */
export type AskedField = Without<FormField, 'name'>;

export const always: Need = { kind: 'always' };
export const never: Need = { kind: 'never' };
