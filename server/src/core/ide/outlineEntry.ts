import type { Span } from '../text/span';

export type OutlineKind =
  | 'group'
  | 'phase'
  | 'step'
  | 'part'
  | 'tool'
  | 'consumable'
  | 'limit'
  | 'reading'
  | 'check'
  | 'figure'
  | 'variant'
  | 'option'
  | 'outcome'
  | 'assembly'
  | 'balance-group'
  | 'dimension'
  | 'kit-line'
  | 'concession'
  | 'setting';

/** An entry of a document's table of contents. */
export interface OutlineEntry {
  readonly kind: OutlineKind;
  /** Never empty. */
  readonly label: string;
  /** What tells it from its neighbours: the name to an id, the torques of a step. */
  readonly detail: string;
  /** How one looks for it; undefined for what is only a heading. */
  readonly symbol: { readonly id: string; readonly name: string } | undefined;
  readonly span: Span;
  /** The words to put the cursor at, within the span. */
  readonly labelSpan: Span;
  readonly children: readonly OutlineEntry[];
}
