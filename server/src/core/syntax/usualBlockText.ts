import type { ScalarNode } from './node';
import { CR, DASH, isGap, LF, SPACE, type UsualText, unusual } from './usualText';

/** A text behind `|` or `>`, whose first line stands right below and says how far all are indented. */
export function readBlockText(at: UsualText, parentIndent: number): ScalarNode {
  const { text, at: from } = at;
  const folded = text.charAt(from) === '>';
  at.at++;
  const stripped = at.code() === DASH;
  if (stripped) at.at++;
  if (!atNewline(text, at.at)) unusual();
  const { lines, end } = linesBelow(text, text.indexOf('\n', at.at) + 1, parentIndent);
  const value = (folded ? fold(lines) : lines.join('\n')) + (stripped ? '' : '\n');
  // The next line is looked for behind this line end.
  at.at = text.charCodeAt(end - 1) === LF ? end - 1 : end;
  at.valueEnd = end;
  at.nextLine();
  return at.scalar(from, end, folded ? 'folded' : 'literal', value);
}

interface BlockLines {
  /** Without their indentation. */
  readonly lines: readonly string[];
  /** Where the last line that is not blank ends, with its line end. */
  readonly end: number;
}

function linesBelow(text: string, first: number, parentIndent: number): BlockLines {
  const indent = spacesAt(text, first);
  if (indent <= parentIndent || isGap(text.charCodeAt(first + indent))) unusual();
  const lines: string[] = [];
  let end = first;
  let blank = 0;
  for (let start = first; start < text.length; ) {
    const spaces = spacesAt(text, start);
    const newline = text.indexOf('\n', start);
    const next = newline < 0 ? text.length : newline + 1;
    if (isGap(text.charCodeAt(start + spaces))) {
      // A line of spaces alone is text where it is longer than the indentation.
      if (spaces > indent || newline < 0) unusual();
      blank++;
    } else {
      if (spaces < indent) break;
      for (; blank > 0; blank--) lines.push('');
      lines.push(text.slice(start + indent, lineEnd(text, newline < 0 ? next : newline)));
      end = next;
    }
    start = next;
  }
  return { lines, end };
}

/** A line break becomes a space, a blank line a line break; lines that are indented more stay as they are. */
function fold(lines: readonly string[]): string {
  let text = '';
  let between = '';
  let wasDeeper = false;
  for (const line of lines) {
    if (line === '') {
      if (between === '\n') text += '\n';
      else between = '\n';
    } else if (line.startsWith(' ')) {
      if (between === ' ') between = '\n';
      else if (!wasDeeper && between === '\n') between = '\n\n';
      text += between + line;
      between = '\n';
      wasDeeper = true;
    } else {
      text += between + line;
      between = ' ';
      wasDeeper = false;
    }
  }
  return text;
}

function atNewline(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code === LF || code === CR;
}

function lineEnd(text: string, newline: number): number {
  return text.charCodeAt(newline - 1) === CR ? newline - 1 : newline;
}

function spacesAt(text: string, start: number): number {
  let at = start;
  while (text.charCodeAt(at) === SPACE) at++;
  return at - start;
}
