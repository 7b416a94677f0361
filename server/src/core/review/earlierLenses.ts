import type { Span } from '../text/span';
import type { Change } from './change';
import { shortened } from './changeWords';
import { wordsOf } from './meaning';

/** Values that a reviewer must not overlook where they stand. */
const SHOWN: ReadonlySet<string> = new Set([
  'torque',
  'angle',
  'passes',
  'prevailing-torque',
  'hand',
  'accept',
  'thread',
]);

/** What stands above a value that was another one: `was 4.6 ± 0.3 N·m in revision B`. */
export function earlierLenses(
  changes: readonly { readonly change: Change; readonly since: string }[],
): { readonly span: Span; readonly text: string }[] {
  return changes.flatMap(({ change, since }) => {
    const { key, before, after, class: one } = change;
    if (after === undefined || one === 'looks' || key === undefined || !SHOWN.has(key)) return [];
    const was =
      before === undefined ? `not stated in ${since}` : `was ${shortened(wordsOf(before.text), 60)} in ${since}`;
    return [{ span: after.span, text: change.note === undefined ? was : `${was}: ${change.note}` }];
  });
}
