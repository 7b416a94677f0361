import type { LineRange } from './layout';

/** What of a document is to be formatted. */
export interface Wanted extends LineRange {
  /** Whether items may change places, and what holds them its indentation. */
  readonly structure: 'free' | 'fixed';
}

/** An item is formatted where one of its lines is wanted. */
export function isTouched(wanted: Wanted, { first, end }: LineRange): boolean {
  return first < wanted.end && wanted.first < end;
}

/** What stands between items is formatted where all of its lines are wanted. */
export function isInside(wanted: Wanted, { first, end }: LineRange): boolean {
  return wanted.first <= first && end <= wanted.end;
}
