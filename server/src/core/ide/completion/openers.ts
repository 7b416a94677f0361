/** What opens a place on a line: the dash of a list entry, or a key with its colon. Offsets are within the document. */
export type Opener =
  | {
      readonly is: 'dash';
      readonly column: number;
      readonly at: number;
      readonly end: number;
      readonly content: number;
    }
  | {
      readonly is: 'key';
      readonly column: number;
      readonly at: number;
      readonly name: string;
      /** Behind the name, with its quotes. */
      readonly nameEnd: number;
      /** Behind the colon. */
      readonly end: number;
      /** Where the value starts; the end of the line where there is none. */
      readonly content: number;
    };

/** One line of the text without its line end, and what opens on it, from left to right. */
export interface OpenedLine {
  readonly start: number;
  readonly end: number;
  readonly indent: number;
  readonly openers: readonly Opener[];
  /** Where the content behind all openers starts; the end of the line where there is none. */
  readonly content: number;
}

const KEY = /(?:"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'|[^\s[\]{},"'#|>&*!%@`][^\n]*?)(?=\s*:(?:[ \t]|$))/y;

/** The line that holds an offset. Nothing is asked of the lines around it, so a broken one costs only itself. */
export function openedLineAt(text: string, offset: number): OpenedLine {
  const { start, end } = lineSpanAt(text, offset);
  const indent = indentAt(text, start, end);
  const openers: Opener[] = [];
  let at = start + indent;
  while (isDash(text, at, end)) {
    const content = skipBlanks(text, at + 1, end);
    openers.push({ is: 'dash', column: at - start, at, end: at + 1, content });
    at = content;
  }
  const key = keyAt(text, at, end, start);
  if (key !== undefined) openers.push(key);
  return { start, end, indent, openers, content: openers.at(-1)?.content ?? at };
}

export function lineSpanAt(text: string, offset: number): { start: number; end: number } {
  const start = offset === 0 ? 0 : text.lastIndexOf('\n', offset - 1) + 1;
  const newline = text.indexOf('\n', offset);
  const next = newline < 0 ? text.length : newline;
  const end = next > start && text.charCodeAt(next - 1) === 13 ? next - 1 : next;
  return { start: text.charCodeAt(start) === 0xfeff ? start + 1 : start, end };
}

/** How many spaces a line starts with. */
export function indentAt(text: string, start: number, end: number): number {
  let at = start;
  while (at < end && text.charCodeAt(at) === 32) at++;
  return at - start;
}

/** Whether a line holds nothing but blanks or a comment from an offset on. */
export function isTriviaFrom(text: string, offset: number, end: number): boolean {
  const at = skipBlanks(text, offset, end);
  return at >= end || text.charAt(at) === '#';
}

export function skipBlanks(text: string, offset: number, end: number): number {
  let at = offset;
  while (at < end && (text.charCodeAt(at) === 32 || text.charCodeAt(at) === 9)) at++;
  return at;
}

function isDash(text: string, at: number, end: number): boolean {
  if (at >= end || text.charAt(at) !== '-') return false;
  return at + 1 >= end || text.charAt(at + 1) === ' ' || text.charAt(at + 1) === '\t';
}

function keyAt(text: string, at: number, end: number, lineStart: number): Opener | undefined {
  KEY.lastIndex = 0;
  const line = text.slice(at, end);
  const found = KEY.exec(line)?.[0];
  if (found === undefined || found === '') return undefined;
  const nameEnd = at + found.length;
  const colon = text.indexOf(':', nameEnd);
  const content = skipBlanks(text, colon + 1, end);
  // A comment behind the colon is no value.
  const value = content > colon + 1 && text.charAt(content) === '#' ? end : content;
  const name = /^["']/.test(found) ? found.slice(1, -1) : found;
  return { is: 'key', column: at - lineStart, at, name, nameEnd, end: colon + 1, content: value };
}
