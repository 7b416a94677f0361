import type { Change } from '../review/change';
import type { FindingsChange } from '../review/findingsChange';
import type { Version } from '../review/version';

/** What a review says: the changes, worst first, and what they do to the findings. */
export interface Reviewed {
  readonly labels: { readonly before: string; readonly after: string };
  readonly before: Version;
  readonly after: Version;
  /** Files whose contents differ. */
  readonly files: readonly string[];
  readonly changes: readonly Change[];
  readonly findings: FindingsChange;
}
