import type { BuildSet } from '../builds';
import type { ItemRange } from '../syntax/node';

/** Why an instruction cannot be carried out as written, or what is wrong when the work is over. */
export type Cause =
  | 'not-fitted'
  | 'still-fastened'
  | 'covered'
  | 'fitted-already'
  | 'carrier-missing'
  | 'in-the-way'
  | 'unreachable'
  | 'still-in-unit'
  | 'nothing-held'
  | 'used-again'
  | 'seal-used-again'
  | 'not-cleaned'
  | 'not-inspected'
  | 'not-lubricated'
  | 'not-threadlocked'
  | 'not-heated'
  | 'not-cooled'
  | 'threadlocker-on-oil'
  | 'cleaning-forbidden'
  | 'hot-while-tightened'
  | 'spun-loose'
  | 'spun-uncured'
  | 'hand-unknown'
  | 'undecided-yet'
  | 'size-not-chosen'
  | 'not-measured'
  | 'undecided'
  | 'fate-open'
  | 'mark-missing'
  | 'alignment-missing'
  | 'balance-missing'
  | 'adjustment-open'
  | 'set-mixed'
  | 'check-missing'
  | 'result-void'
  | 'left-off'
  | 'left-loose'
  | 'left-in'
  | 'loop-broken';

/** What an instruction did to a part, so that a later failure can point to it. */
export type Deed =
  | 'fitted'
  | 'removed'
  | 'loosened'
  | 'tightened'
  | 'seated'
  | 'cleaned'
  | 'applied'
  | 'marked'
  | 'measured'
  | 'adjusted'
  | 'heated'
  | 'sent'
  | 'discarded';

export interface Happening {
  readonly what: Deed;
  /** The part, limit or check that it happened to. */
  readonly part: string;
  readonly where: BuildSet;
  readonly at: ItemRange;
  /** Place of the instruction in the walk. */
  readonly index: number;
}

/** One failure: what fails, for which builds, and what made it so. */
export interface Failure {
  readonly cause: Cause;
  /** The part, check or limit concerned. */
  readonly about: string;
  /** The other part of the contradiction: the fastener that holds, the part that covers. */
  readonly other: string | undefined;
  readonly where: BuildSet;
  /** Where it shows; undefined at the end of the work. */
  readonly at: ItemRange | undefined;
  /** Place in the walk of the instruction that shows it: the number of instructions at the end of the work. */
  readonly index: number;
  /** The earlier instruction that made it so, and what it did. */
  readonly because: Happening | undefined;
  /** What made a result worthless after it was made. */
  readonly undone: Happening | undefined;
  /** What a loop fails with, the second time round. */
  readonly within: Failure | undefined;
}
