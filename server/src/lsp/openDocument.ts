import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import { DocumentText } from '../core/text/documentText';
import { LineIndex } from '../core/text/lineIndex';
import { toSpan } from './convert';

/** A document that the client has open: its text counts, whatever lies on disk. */
export interface OpenDocument {
  readonly uri: Uri;
  /** The URI in the client's own spelling. */
  readonly clientUri: string;
  readonly version: number;
  readonly content: DocumentText;
}

/** The text after a client's changes, each of which counts from what the one before it left. */
export function applyChanges(content: DocumentText, changes: readonly TextDocumentContentChangeEvent[]): DocumentText {
  return changes.reduce((before, change) => {
    if (!('range' in change)) return DocumentText.of(change.text);
    const { start, end } = toSpan(new LineIndex(before), change.range);
    return before.edited(start, end, change.text);
  }, content);
}
