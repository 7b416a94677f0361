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
  | 'nothing-held'
  | 'used-again'
  | 'seal-used-again'
  | 'not-cleaned'
  | 'not-inspected'
  | 'not-lubricated'
  | 'not-threadlocked'
  | 'threadlocker-on-oil'
  | 'cleaning-forbidden'
  | 'hot-while-tightened'
  | 'left-off'
  | 'left-loose'
  | 'left-in'
  | 'check-missing'
  | 'result-void'
  | 'hand-unknown'
  | 'mark-missing'
  | 'alignment-missing'
  | 'balance-missing'
  | 'adjustment-open';

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
  /** The earlier instruction that made it so, and what it did. */
  readonly because: Happening | undefined;
}

/** What happened to a part: enough to say later which instruction it was. */
export interface Happening {
  readonly what:
    | 'fitted'
    | 'removed'
    | 'loosened'
    | 'tightened'
    | 'cleaned'
    | 'applied'
    | 'measured'
    | 'checked'
    | 'touched'
    | 'heated';
  readonly part: string;
  readonly where: BuildSet;
  readonly at: ItemRange;
  /** Place of the instruction in the walk. */
  readonly index: number;
}
