import type { TextEdit } from '../../../text/span';
import type { Failure } from '../../../walk/failure';

/** A change that may mend a failure. Whether it does, only walking the changed text tells. */
export interface Candidate {
  /** What it does, as a command. */
  readonly title: string;
  readonly edits: readonly TextEdit[];
  /** Offered only where nothing else mends the failure. */
  readonly atLast?: boolean;
  /** What to try instead where the change itself could not be carried out: it is given what fails then and did not before. */
  further?(added: readonly Failure[]): Candidate | undefined;
}
