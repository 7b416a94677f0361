import { readDocument, type SyntaxDocument } from '../syntax/readDocument';
import { ReadingMemo } from '../syntax/readingMemo';
import type { Snapshot } from './snapshot';

/**
 * All files as they would be if a document had another text. Items that the edits do not touch are taken over
 * from the document, so that only what differs is read; neither the snapshot nor the document changes.
 */
export function withOtherText(
  snapshot: Snapshot,
  document: SyntaxDocument,
  text: string,
): { readonly snapshot: Snapshot; readonly document: SyntaxDocument } {
  const other = readDocument(document.uri, document.kind, text, ReadingMemo.of(document.reading));
  return { snapshot: snapshot.with(document.uri, { is: 'document', document: other }), document: other };
}
