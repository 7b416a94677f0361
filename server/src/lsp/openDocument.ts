import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import { LineIndex } from '../core/text/lineIndex';
import { toSpan } from './convert';

/** A document that the client has open: its text counts, whatever lies on disk. */
export interface OpenDocument {
  readonly uri: Uri;
  /** The URI in the client's own spelling. */
  readonly clientUri: string;
  readonly version: number;
  readonly text: string;
}

/** The text after a client's changes, each of which counts from what the one before it left. */
export function applyChanges(text: string, changes: readonly TextDocumentContentChangeEvent[]): string {
  return changes.reduce((before, change) => {
    if (!('range' in change)) return change.text;
    const { start, end } = toSpan(new LineIndex(before), change.range);
    return before.slice(0, start) + change.text + before.slice(end);
  }, text);
}
