import type { StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction, Step } from '../model/generated/types';
import type { ItemRange } from '../syntax/node';
import type { Failure } from './failure';
import type { Lane } from './lane';

/** Two ways that the work can go, which are both walked: an optional step, or what is done when a result is not right. */
export interface Fork {
  /** Its place among the forks of the procedure, as the build space numbers them. */
  readonly index: number;
  /** In words, to stand behind "when": on the side way, and on the plain way. */
  readonly taken: string;
  readonly notTaken: string;
  readonly of: ForkOrigin;
}

/** What the ways part at, so that they can be put into words of another language. */
export type ForkOrigin =
  | { readonly is: 'optional'; readonly step: Step }
  | { readonly is: 'result'; readonly instruction: Instruction };

/** One instruction in its turn. */
export interface Moment {
  readonly step: StepView;
  readonly instruction: Instruction;
  /** The builds and ways on which it is carried out. */
  readonly where: BuildSet;
  readonly at: ItemRange;
  /** It is walked for the second time, because a later instruction goes back before it. */
  readonly again: boolean;
  /** The lanes that it changed, by part, as they are afterwards. */
  readonly lanes: ReadonlyMap<string, Lane>;
  /** The limits, readings, checks and balance groups that it made. */
  readonly made: readonly string[];
  /** What of the unit it looked at and what it changed, by number: two moments that share none can change places. */
  readonly reads: readonly number[];
  readonly changes: readonly { readonly cell: number }[];
}

/**
 * Some steps that follow each other. The same object as long as neither what they did nor the unit before them has changed,
 * and with the same `moments` as long as what they did has not: what is worked out of a stretch can be kept with it.
 */
export interface Stretch {
  readonly moments: readonly Moment[];
  /** The moments that change the lane of a part. */
  momentsOf(part: string): readonly Moment[];
  /** The lane of a part before them; undefined where nothing was ever said of it. */
  lane(id: string): Lane | undefined;
}

/** What the walk of a procedure gives. */
export interface Trace {
  /** Everything that fails, in the order in which it shows. */
  readonly failures: readonly Failure[];
  readonly forks: readonly Fork[];
  /** The lanes of the parts as the work begins, and as it ends. */
  readonly start: ReadonlyMap<string, Lane>;
  readonly end: ReadonlyMap<string, Lane>;
  readonly moments: readonly Moment[];
  /** The moments that change the lane of a part, found without going through the others. */
  momentsOf(part: string): readonly Moment[];
  /** All moments, a stretch at a time. */
  readonly stretches: readonly Stretch[];
  /** The builds and ways that come to the end of the work; a rejected unit does not. */
  readonly alive: BuildSet;
  /** The whole document resolves: what is not there at the end is truly missing. */
  readonly whole: boolean;
  /** How many instructions were carried out for this walk, and not taken over from an earlier one. */
  readonly carriedOut: number;
}
