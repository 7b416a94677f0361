import { newlineOf } from '../rules/support/newline';
import type { MapNode, Node, Pair } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span, TextEdit } from '../text/span';

/** Text put in at an offset. */
export function insertAt(at: number, text: string): TextEdit {
  return { span: { start: at, end: at }, text };
}

/** Where the line ends on which an offset stands, before its break. */
export function endOfLine(text: string, offset: number): number {
  const newline = text.indexOf('\n', offset);
  const end = newline < 0 ? text.length : newline;
  return text.charAt(end - 1) === '\r' && end > offset ? end - 1 : end;
}

export function startOfLine(text: string, offset: number): number {
  return text.lastIndexOf('\n', offset - 1) + 1;
}

/** A new entry on a line of its own behind an entry of a list, and behind the remark on that one's line. */
export function entryBehind({ text, spanOf }: SyntaxDocument, entry: Node, content: string): TextEdit {
  const { start, end } = spanOf(entry);
  const dash = text.slice(startOfLine(text, start), start);
  const filled = start + text.slice(start, end).trimEnd().length;
  return insertAt(endOfLine(text, filled), `${newlineOf(text)}${dash}${content}`);
}

/** Remarks right above a line that begins with an indent speak of it, and stay above it. */
export function withRemarksAbove(text: string, start: number, indent = ''): number {
  let at = start;
  while (at > 0) {
    const above = startOfLine(text, at - 1);
    if (!text.startsWith(`${indent}#`, above)) break;
    at = above;
  }
  return at;
}

/** The stretch of a key with its value, without white space at its end. */
export function spanOfPair(document: SyntaxDocument, { key, value }: Pair): Span {
  const { start, end } = document.spanOf(key);
  const last = value === undefined ? end + 1 : document.spanOf(value).end;
  return { start, end: start + document.text.slice(start, Math.max(last, end + 1)).trimEnd().length };
}

/** The white space that brings a key to where the keys of a map in lines stand; undefined in a map between brackets. */
export function indentOf(document: SyntaxDocument, map: MapNode): string | undefined {
  const [first] = map.pairs;
  if (map.flow || first === undefined) return undefined;
  const { start } = document.spanOf(first.key);
  return ' '.repeat(start - startOfLine(document.text, start));
}
