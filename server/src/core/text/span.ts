/** A stretch of a document's text: UTF-16 offsets, `end` exclusive. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

/** One change of a document's text: what stands in `span` is replaced by `text`. */
export interface TextEdit {
  readonly span: Span;
  readonly text: string;
}

/**
 * Applies edits that do not overlap, in any order. An edit that overlaps an earlier one is left out,
 * since half of two changes is worse than one of them; the caller can run again for the rest.
 */
export function applyEdits(text: string, edits: readonly TextEdit[]): string {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start || a.span.end - b.span.end);
  let result = '';
  let at = 0;
  for (const edit of sorted) {
    if (edit.span.start < at) continue;
    result += text.slice(at, edit.span.start) + edit.text;
    at = edit.span.end;
  }
  return result + text.slice(at);
}
