import type { RefKind } from '../../model/shape';
import type { Span } from '../../text/span';

/** What a candidate is, so that an editor can show it by a sign. */
export type CandidateKind = 'key' | 'verb' | 'word' | 'condition' | 'unit' | 'value' | 'file' | 'rule' | RefKind;

/** What is looked up of a candidate only once somebody looks at it. It goes over the wire and back. */
export type CandidateAbout =
  | { readonly is: 'thing'; readonly kind: RefKind; readonly id: string; readonly lists?: boolean }
  | { readonly is: 'key'; readonly def: string; readonly path: readonly string[] }
  | { readonly is: 'rule'; readonly id: string };

/** One thing that may be written at a place. */
export interface Candidate {
  readonly kind: CandidateKind;
  readonly label: string;
  /** What people call it, or what else tells it apart. */
  readonly detail?: string | undefined;
  /** Why it stands where it stands among the others, in a few words. */
  readonly why?: string | undefined;
  /** What is written, where that is not the label. */
  readonly text?: string;
  /** What is written with places to fill in, as a snippet of the protocol; lines start at the line's own indentation. */
  readonly snippet?: string;
  /** What is compared with what was typed, where that is not the label. */
  readonly filter?: string;
  /** Smaller comes first; what is equal stays in the order given. */
  readonly rank?: number;
  readonly about?: CandidateAbout;
}

/** Everything that fits at a place, the best first. */
export interface Completions {
  /** What the chosen one replaces: all of it, or only up to the cursor where it is inserted. */
  readonly replace: Span;
  readonly insert: Span;
  readonly candidates: readonly Candidate[];
}

export const NOTHING: readonly Candidate[] = [];
