import { hasMark, type Lines, lineEnd, Mark } from './lines';
import { unsafeLine } from './unsafeLine';

/** A line that must not reach the YAML reader, and what it is. A first `---` is a start marker: nothing is wrong. */
export interface DisarmedLine {
  readonly start: number;
  readonly end: number;
  readonly what: 'conflict-marker' | 'directive' | 'second-document' | 'start-marker';
}

export interface Disarmed {
  readonly text: string;
  readonly disarmed: readonly DisarmedLine[];
}

/**
 * Turns merge-conflict markers, directives and document markers into comments of the same length, so that one such
 * line costs one finding and the rest of the document is still read at its true offsets. Whether a line is one of them
 * is said by the line alone: what was the same before is the same now, disarmed or not.
 */
export function disarm(text: string, lines: Lines): Disarmed {
  if (lines.unsafe.length === 0) return { text, disarmed: [] };
  const firstContent = lines.starts.findIndex((_, i) => !hasMark(lines, i, Mark.TRIVIA));
  const disarmed = lines.unsafe.map((line): DisarmedLine => {
    const start = lines.starts[line] ?? 0;
    const end = lineEnd(lines, line);
    return { start, end, what: whatOf(text, start, end, firstContent >= 0 && firstContent < line) };
  });
  return { text: withComments(text, disarmed), disarmed };
}

function whatOf(text: string, start: number, end: number, contentSeen: boolean): DisarmedLine['what'] {
  const what = unsafeLine(text, start, end);
  if (what === 'bare-marker' && !contentSeen) return 'start-marker';
  return what === 'conflict-marker' || what === 'directive' ? what : 'second-document';
}

function withComments(text: string, disarmed: readonly DisarmedLine[]): string {
  let result = '';
  let at = 0;
  for (const { start } of disarmed) {
    result += `${text.slice(at, start)}#`;
    at = start + 1;
  }
  return result + text.slice(at);
}
