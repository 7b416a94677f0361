import { lastUpTo } from './countWhile';
import type { DocumentText } from './documentText';
import { lineStarts } from './lineStarts';

/** A position as people and protocols count it: line and UTF-16 character, both from 0. */
export interface LinePosition {
  readonly line: number;
  readonly character: number;
}

/** Finds lines by offset and offsets by line; lines end at LF, CR LF or a lone CR. */
export class LineIndex {
  readonly #text: string | DocumentText;
  readonly #starts: Int32Array;

  constructor(text: string | DocumentText) {
    this.#text = text;
    this.#starts = typeof text === 'string' ? lineStarts(text) : text.lineStarts;
  }

  get lineCount(): number {
    return this.#starts.length;
  }

  position(offset: number): LinePosition {
    const line = this.#lineAt(Math.max(0, Math.min(offset, this.#text.length)));
    return { line, character: Math.max(0, offset - (this.#starts[line] ?? 0)) };
  }

  offset(position: LinePosition): number {
    if (position.line < 0) return 0;
    const start = this.#starts[position.line];
    if (start === undefined) return this.#text.length;
    return Math.min(start + Math.max(0, position.character), this.lineEnd(position.line));
  }

  lineStart(line: number): number {
    return this.#starts[line] ?? this.#text.length;
  }

  /** The offset just after the last character of the line, before its line end. */
  lineEnd(line: number): number {
    let end = this.#starts[line + 1] ?? this.#text.length;
    while (end > this.lineStart(line) && isLineEnd(this.#text.charCodeAt(end - 1))) end--;
    return end;
  }

  lineText(line: number): string {
    return this.#text.slice(this.lineStart(line), this.lineEnd(line));
  }

  #lineAt(offset: number): number {
    return lastUpTo(this.#starts, offset);
  }
}

function isLineEnd(code: number): boolean {
  return code === 10 || code === 13;
}
