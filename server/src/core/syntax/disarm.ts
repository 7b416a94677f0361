import { countWhile } from '../text/countWhile';
import type { DocumentText } from '../text/documentText';
import { hasMark, type Lines, lineEnd, Mark } from './lines';
import { unsafeLine } from './unsafeLine';

/** A line that must not reach the YAML reader, and what it is. A first `---` is a start marker: nothing is wrong. */
export interface DisarmedLine {
  readonly start: number;
  readonly end: number;
  readonly what: 'conflict-marker' | 'directive' | 'second-document' | 'start-marker';
}

export interface Disarmed {
  readonly text: SafeText;
  readonly disarmed: readonly DisarmedLine[];
}

/** The text of a document with the first character of each disarmed line made a `#`, where it is asked for. */
export class SafeText {
  constructor(
    readonly text: DocumentText,
    readonly disarmed: readonly DisarmedLine[],
  ) {}

  slice(from: number, to: number): string {
    const written = this.text.slice(from, to);
    if (this.disarmed.length === 0) return written;
    return withComments(written, from, this.disarmed.slice(this.#firstFrom(from), this.#firstFrom(to)));
  }

  /** The first disarmed line that starts at an offset or behind it. */
  #firstFrom(offset: number): number {
    return countWhile(this.disarmed.length, (index) => (this.disarmed[index]?.start ?? 0) < offset);
  }
}

/**
 * Turns merge-conflict markers, directives and document markers into comments of the same length, so that one such
 * line costs one finding and the rest of the document is still read at its true offsets. Whether a line is one of them
 * is said by the line alone: what was the same before is the same now, disarmed or not.
 */
export function disarm(text: DocumentText, lines: Lines): Disarmed {
  if (lines.unsafe.length === 0) return { text: new SafeText(text, []), disarmed: [] };
  const firstContent = lines.starts.findIndex((_, i) => !hasMark(lines, i, Mark.TRIVIA));
  const disarmed = lines.unsafe.map((line): DisarmedLine => {
    const start = lines.starts[line] ?? 0;
    const end = lineEnd(lines, line);
    return { start, end, what: whatOf(text.slice(start, end), firstContent >= 0 && firstContent < line) };
  });
  return { text: new SafeText(text, disarmed), disarmed };
}

function whatOf(line: string, contentSeen: boolean): DisarmedLine['what'] {
  const what = unsafeLine(line, 0, line.length);
  if (what === 'bare-marker' && !contentSeen) return 'start-marker';
  return what === 'conflict-marker' || what === 'directive' ? what : 'second-document';
}

/** @param from where the text starts in that of the document */
function withComments(text: string, from: number, disarmed: readonly DisarmedLine[]): string {
  let result = '';
  let at = 0;
  for (const { start } of disarmed) {
    result += `${text.slice(at, start - from)}#`;
    at = start - from + 1;
  }
  return result + text.slice(at);
}
