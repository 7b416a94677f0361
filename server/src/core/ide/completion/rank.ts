import type { StandingUnit } from './rankingState';

/** How well something fits where it is asked for: 0 is best. `why` says it in a few words, where there is something to say. */
export interface Rank {
  readonly rank: number;
  readonly why?: string;
}

/** Judges a part that can be met on some builds of the step. */
export type JudgePart = (unit: StandingUnit, id: string) => Rank;

/** What is done next, what can be done, what something is in the way of, what is done or cannot be, and what is nowhere here. */
export const RANKS = { next: 0, possible: 1, blocked: 2, pointless: 3, elsewhere: 4 } as const;
