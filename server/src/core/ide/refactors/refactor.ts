import type { TextEdit } from '../../text/span';

/** A change of a document that mends nothing: a writer asks for it. */
export interface Refactor {
  /** Tells it from the others at the same place. */
  readonly id: string;
  readonly kind: 'sort-tools' | 'extract' | 'rewrite';
  /** What it does, as a command. */
  readonly title: string;
  /** Worked out when somebody wants it done; undefined where it cannot be done after all. */
  edits(): readonly TextEdit[] | undefined;
}
