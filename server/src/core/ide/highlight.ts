import type { Snapshot } from '../analysis/snapshot';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { referencesIn, targetsAt } from './references';

/** A place to mark; `write` where the thing is declared. */
export interface Highlight {
  readonly span: Span;
  readonly kind: 'read' | 'write';
}

/** Every place in a document that names what the id at an offset names. */
export function highlightsAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): Highlight[] {
  return referencesIn(snapshot, document, targetsAt(snapshot, document, offset)).map(({ span, declares }) => ({
    span,
    kind: declares ? 'write' : 'read',
  }));
}
