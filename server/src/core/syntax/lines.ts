import type { DocumentText } from '../text/documentText';
import { unsafeLine } from './unsafeLine';

/** What a line is, as bits: all that the cut of a document asks besides how far the line is indented. */
export const Mark = {
  /** Blank, or nothing but a comment; an unsafe line is made one. */
  TRIVIA: 1,
  /** Nothing but spaces. */
  BLANK: 2,
  /** Opens an entry of a list: a dash, then a space or nothing. */
  DASH: 4,
  /** Starts with what no key starts with: a tab, a closing bracket. */
  NO_KEY: 8,
  /** Starts with an opening bracket. */
  FLOW: 16,
  /** Ends with CR LF. */
  CR: 32,
} as const;

/**
 * The lines of a text, as columns of numbers with a row for each line. A document has tens of thousands of lines, and the
 * columns are made anew for every key that is pressed: numbers are copied and moved in a fraction of the time that objects
 * take. Everything but where it starts depends on the line's own text.
 */
export interface Lines {
  /** Offsets in the text; a line ends before the next one's start. */
  readonly starts: Int32Array;
  /** How many spaces stand before the first other character. */
  readonly indents: Int32Array;
  readonly marks: Uint8Array;
  /** The lines that must not reach the YAML reader. Nearly every document has none. */
  readonly unsafe: readonly number[];
  readonly textLength: number;
}

/** The same while lines are being added. */
export interface LinesInMaking {
  readonly starts: number[];
  readonly indents: number[];
  readonly marks: number[];
  readonly unsafe: number[];
}

const SPACE = 32;
const TAB = 9;
const CR = 13;
const HASH = 35;
const DASH = 45;

/** All lines of a text; a byte order mark belongs to none. */
export function linesOf(text: DocumentText): Lines {
  const { starts, indents, marks, unsafe } = scanLines(text, text.charCodeAt(0) === 0xfeff ? 1 : 0, undefined);
  return {
    starts: Int32Array.from(starts),
    indents: Int32Array.from(indents),
    marks: Uint8Array.from(marks),
    unsafe,
    textLength: text.length,
  };
}

/** The lines from one line start to another, or to the end of the text. */
export function scanLines(text: DocumentText, from: number, to: number | undefined): LinesInMaking {
  const stretch = from === 0 && to === undefined ? text.whole : text.slice(from, to);
  const lines: LinesInMaking = { starts: [], indents: [], marks: [], unsafe: [] };
  for (let start = 0; ; ) {
    const newline = stretch.indexOf('\n', start);
    addLine(lines, stretch, start, newline < 0 ? stretch.length : newline, from);
    start = newline + 1;
    if (newline < 0 || (to !== undefined && start === stretch.length)) return lines;
  }
}

/** Where the line ends, without its line end. */
export function lineEnd(lines: Lines, index: number): number {
  const next = lines.starts[index + 1];
  const end = next === undefined ? lines.textLength : next - 1;
  return hasMark(lines, index, Mark.CR) ? end - 1 : end;
}

export function hasMark(lines: Lines, index: number, mark: number): boolean {
  return ((lines.marks[index] ?? 0) & mark) !== 0;
}

/** @param base where the text starts in that of the document */
function addLine(lines: LinesInMaking, text: string, start: number, newline: number, base: number): void {
  const hasCr = newline > start && text.charCodeAt(newline - 1) === CR;
  const end = hasCr ? newline - 1 : newline;
  let at = start;
  while (at < end && text.charCodeAt(at) === SPACE) at++;
  const isUnsafe = at === start && unsafeLine(text, start, end) !== undefined;
  if (isUnsafe) lines.unsafe.push(lines.starts.length);
  lines.starts.push(base + start);
  lines.indents.push(at - start);
  lines.marks.push((isUnsafe ? Mark.TRIVIA : marksOf(text, at, end)) | (hasCr ? Mark.CR : 0));
}

/** The marks of a line by what stands behind its spaces. */
function marksOf(text: string, at: number, end: number): number {
  if (at >= end) return Mark.TRIVIA | Mark.BLANK;
  switch (text.charCodeAt(at)) {
    case HASH:
      return Mark.TRIVIA;
    case TAB:
      return isTriviaBehindTab(text, at, end) ? Mark.TRIVIA | Mark.NO_KEY : Mark.NO_KEY;
    case DASH:
      return at + 1 >= end || isSpaceOrTab(text.charCodeAt(at + 1)) ? Mark.DASH : 0;
    case 123: // {
    case 91: // [
      return Mark.FLOW;
    case 125: // }
    case 93: // ]
      return Mark.NO_KEY;
    default:
      return 0;
  }
}

function isTriviaBehindTab(text: string, tab: number, end: number): boolean {
  let at = tab;
  while (at < end && isSpaceOrTab(text.charCodeAt(at))) at++;
  return at >= end || text.charCodeAt(at) === HASH;
}

function isSpaceOrTab(code: number): boolean {
  return code === SPACE || code === TAB;
}
