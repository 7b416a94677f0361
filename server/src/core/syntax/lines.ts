/** A line of the text: offsets without its line end, and how far it is indented by spaces. */
export interface Line {
  readonly start: number;
  readonly end: number;
  readonly indent: number;
  /** The first character after the spaces; empty on a blank line. */
  readonly first: string;
  /** Blank, or nothing but a comment. */
  readonly trivia: boolean;
}

const SPACE = 32;
const TAB = 9;
const CR = 13;

export function linesOf(text: string, from: number): Line[] {
  const lines: Line[] = [];
  let start = from;
  while (start <= text.length) {
    const newline = text.indexOf('\n', start);
    const next = newline < 0 ? text.length : newline;
    lines.push(lineAt(text, start, next));
    if (newline < 0) break;
    start = newline + 1;
  }
  return lines;
}

function lineAt(text: string, start: number, next: number): Line {
  const end = next > start && text.charCodeAt(next - 1) === CR ? next - 1 : next;
  let at = start;
  while (at < end && text.charCodeAt(at) === SPACE) at++;
  const indent = at - start;
  let visible = at;
  while (visible < end && (text.charCodeAt(visible) === SPACE || text.charCodeAt(visible) === TAB)) visible++;
  const first = at < end ? text.charAt(at) : '';
  const trivia = visible >= end || text.charAt(visible) === '#';
  return { start, end, indent, first, trivia };
}

/** Whether the line opens an entry of a list at its indentation: a dash, then a space or nothing. */
export function opensListEntry(text: string, line: Line): boolean {
  if (line.first !== '-') return false;
  const after = line.start + line.indent + 1;
  return after >= line.end || text.charCodeAt(after) === SPACE || text.charCodeAt(after) === TAB;
}
