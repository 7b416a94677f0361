import type { Item, ListNode, MapNode, Node, Pair, ScalarNode, ScalarStyle } from './node';

/** Thrown, and caught by `readUsually`, where a text is written in a way that is left to the YAML library. */
export const UNUSUAL = new Error('left to the YAML library');

export function unusual(): never {
  throw UNUSUAL;
}

export const LF = 10;
export const CR = 13;
export const SPACE = 32;
export const HASH = 35;
export const DASH = 45;
export const COLON = 58;

/** The text of an item and how far it has been read. */
export class UsualText {
  readonly text: string;
  at = 0;
  /** How far the line that was gone to is indented; -1 at the end of the text. */
  indent = 0;
  /** Where the last value ended, together with a remark on its line. */
  valueEnd = 0;

  constructor(readonly item: Item) {
    this.text = item.text;
  }

  code(): number {
    return this.text.charCodeAt(this.at);
  }

  skipSpaces(): void {
    while (this.text.charCodeAt(this.at) === SPACE) this.at++;
  }

  /** Whether a dash stands here that opens an entry of a list. */
  atDash(): boolean {
    return this.code() === DASH && isGap(this.text.charCodeAt(this.at + 1));
  }

  /** Whether the line ends here, but for a remark. */
  atLineEnd(): boolean {
    const code = this.code();
    return code === LF || code === CR || code === HASH || Number.isNaN(code);
  }

  /** Ends the line behind a value, to which a remark counts, and goes to the next. */
  endValue(): void {
    this.valueEnd = this.at;
    this.skipSpaces();
    if (!this.atLineEnd()) unusual();
    if (this.passRemark()) this.valueEnd = this.at;
    this.nextLine();
  }

  /** Passes over a remark, if one stands here. One that looks like text that was lost is for others to judge. */
  passRemark(): boolean {
    if (this.code() !== HASH) return false;
    const start = this.at;
    if (this.text.charCodeAt(start - 1) !== SPACE) unusual();
    const newline = this.text.indexOf('\n', start);
    this.at = newline < 0 ? this.text.length : newline;
    if (this.text.charCodeAt(this.at - 1) === CR) this.at--;
    if (!/^#(?:#| +[^\s\d])/.test(this.text.slice(start, this.at))) unusual();
    return true;
  }

  /**
   * Goes to the next line with something on it. Lines that are remarks must be lined up with it, since deeper ones count
   * to what stands above them. Says whether there were any.
   */
  nextLine(): boolean {
    let remarks = -1;
    for (;;) {
      const newline = this.text.indexOf('\n', this.at);
      if (newline < 0) break;
      this.at = newline + 1;
      this.skipSpaces();
      this.indent = this.at - newline - 1;
      if (!this.atLineEnd()) return remarks < 0 ? false : remarks === this.indent || unusual();
      if (this.code() !== HASH) continue;
      if (remarks >= 0 && remarks !== this.indent) unusual();
      remarks = this.indent;
    }
    if (remarks >= 0) unusual();
    this.at = this.text.length;
    this.indent = -1;
    return false;
  }

  scalar(from: number, to: number, style: ScalarStyle, text: string): ScalarNode {
    return { kind: 'scalar', item: this.item, from, to, remembered: undefined, style, text };
  }

  list(from: number, to: number, flow: boolean, items: readonly Node[]): ListNode {
    return { kind: 'list', item: this.item, from, to, remembered: undefined, flow, items };
  }

  map(from: number, to: number, flow: boolean, pairs: readonly Pair[]): MapNode {
    return { kind: 'map', item: this.item, from, to, flow, pairs, remembered: undefined };
  }

  /** A block ends with the last visible character of its last value. */
  blockEnd(from: number): number {
    let end = this.valueEnd;
    while (end > from && isWhite(this.text.charCodeAt(end - 1))) end--;
    return end;
  }
}

/** Whether a character, or the end of the text, ends a word: a space or a line end. */
export function isGap(code: number): boolean {
  return code === SPACE || code === LF || code === CR || Number.isNaN(code);
}

function isWhite(code: number): boolean {
  return code <= SPACE || (code >= 0xa0 && /\s/.test(String.fromCharCode(code)));
}
