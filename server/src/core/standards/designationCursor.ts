import type { Span } from '../text/span';
import type { DesignationPart, DesignationProblem } from './threadDesignation';

/** A place in a text that moves on as its beginning is read, and what was read so far. */
export interface DesignationCursor {
  readonly text: string;
  at: number;
  readonly parts: DesignationPart[];
  readonly problems: DesignationProblem[];
}

/** A cursor at the start of a text. */
export function cursorAt(text: string): DesignationCursor {
  return { text, at: 0, parts: [], problems: [] };
}

/** Reads on over what the pattern matches here; the pattern must be sticky. Undefined, and nothing read, where it does not. */
export function take(cursor: DesignationCursor, pattern: RegExp): RegExpExecArray | undefined {
  pattern.lastIndex = cursor.at;
  const match = pattern.exec(cursor.text);
  if (match === null) return undefined;
  cursor.at += match[0].length;
  return match;
}

/** Reads on and notes what was read as a part; blanks and hyphens around it are no part of it. */
export function takePart(
  cursor: DesignationCursor,
  kind: DesignationPart['kind'],
  pattern: RegExp,
): RegExpExecArray | undefined {
  const match = take(cursor, pattern);
  if (match === undefined) return undefined;
  const before = match[0].length - match[0].trimStart().length;
  cursor.parts.push({ kind, span: { start: cursor.at - match[0].length + before, end: cursor.at } });
  return match;
}

/** The rest of the text from here, without blanks around it; the last character where nothing is left. */
export function restSpan({ text, at }: DesignationCursor): Span {
  const rest = text.slice(at);
  if (rest.trim() === '') {
    const end = text.trimEnd().length;
    return { start: Math.max(0, end - 1), end };
  }
  const start = at + (rest.length - rest.trimStart().length);
  return { start, end: start + rest.trim().length };
}

/** The number that digits with a decimal point or comma stand for. */
export function decimal(written: string): number {
  return Number(written.replace(',', '.'));
}
