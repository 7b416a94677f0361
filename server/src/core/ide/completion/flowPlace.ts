import type { Span } from '../../text/span';

/** A bracket that is open around a place. */
export interface FlowFrame {
  readonly is: 'list' | 'map';
  /** The key that the place stands behind in a map; undefined where a key is wanted. */
  readonly key: string | undefined;
  /** All other keys of the map, also those behind the place. */
  readonly keys: readonly string[];
  /** All other texts in the list. */
  readonly items: readonly string[];
}

export interface FlowPlace {
  /** Outermost first. */
  readonly frames: readonly FlowFrame[];
  readonly token: Span;
  readonly quote: '' | '"' | "'";
  /** A colon stands behind the token already. */
  readonly hasColon: boolean;
}

/**
 * The place of a cursor in a value in brackets that starts at `start`. It is read only up to `end`, so that a bracket
 * that nobody has closed yet does not take in what follows. Undefined in a comment and behind the last bracket.
 */
export function flowPlaceAt(text: string, start: number, end: number, cursor: number): FlowPlace | undefined {
  return new FlowScan(text, end, cursor).run(start);
}

interface OpenFrame {
  readonly is: 'list' | 'map';
  key: string | undefined;
  /** A value stands here already, so that only a comma or a bracket may follow. */
  done: boolean;
  readonly keys: string[];
  readonly items: string[];
}

class FlowScan {
  readonly #open: OpenFrame[] = [];
  /** Undefined as long as the cursor is not reached; `none` where nothing can be written. */
  #place: FlowPlace | 'none' | undefined;

  constructor(
    readonly text: string,
    readonly end: number,
    readonly cursor: number,
  ) {}

  run(start: number): FlowPlace | undefined {
    for (let at = start; at <= this.end; ) {
      const next = this.#skipBlanks(at);
      if (next >= this.end) break;
      at = this.#token(next);
      if (this.#open.length === 0) break;
    }
    return this.#place === 'none' ? undefined : this.#place;
  }

  /** Skips blanks, line ends and comments; a cursor among them stands before a token that is not written yet. */
  #skipBlanks(from: number): number {
    let at = from;
    let comment = false;
    for (; at < this.end; at++) {
      const char = this.text.charAt(at);
      if (char === '#' && at > from) comment = true;
      if (char === '\n') comment = false;
      if (!comment && !/\s/.test(char)) break;
      if (at === this.cursor) this.#reach(comment ? 'none' : { start: at, end: at });
    }
    const startsToken = at < this.end && !',]}:[{'.includes(this.text.charAt(at));
    if (at === this.cursor && !startsToken) {
      this.#reach(comment ? 'none' : { start: at, end: at }, '', this.text.charAt(at) === ':');
    }
    return at;
  }

  #token(at: number): number {
    const char = this.text.charAt(at);
    const frame = this.#open.at(-1);
    if (char === '[' || char === '{') {
      this.#open.push({ is: char === '[' ? 'list' : 'map', key: undefined, done: false, keys: [], items: [] });
      return at + 1;
    }
    if (char === ']' || char === '}') {
      this.#open.pop();
      const outer = this.#open.at(-1);
      if (outer !== undefined) outer.done = true;
      return at + 1;
    }
    if (char === ',' && frame !== undefined) Object.assign(frame, { key: undefined, done: false });
    if (char === ',' || char === ':') return at + 1;
    return this.#scalar(at, char === '"' || char === "'" ? char : '');
  }

  #scalar(at: number, quote: '' | '"' | "'"): number {
    const textEnd = quote === '' ? this.#plainEnd(at) : this.#quotedEnd(at, quote);
    let colon = textEnd;
    while (colon < this.end && /[ \t]/.test(this.text.charAt(colon))) colon++;
    const hasColon = this.text.charAt(colon) === ':' && colon < this.end;
    const closed = quote !== '' && this.text.charAt(textEnd - 1) === quote && textEnd - at > 1;
    const token = quote === '' ? { start: at, end: textEnd } : { start: at + 1, end: closed ? textEnd - 1 : textEnd };
    if (token.start <= this.cursor && this.cursor <= token.end) this.#reach(token, quote, hasColon);
    // Behind a word and a blank one goes on writing: the unit of a number.
    else if (quote === '' && !hasColon && this.cursor > textEnd && this.cursor <= colon) {
      this.#reach({ start: at, end: this.cursor });
    } else this.#keep(this.text.slice(token.start, token.end), hasColon);
    return hasColon ? colon + 1 : Math.max(textEnd, this.#place === undefined ? textEnd : colon);
  }

  #keep(written: string, isKey: boolean): void {
    const frame = this.#open.at(-1);
    if (frame === undefined) return;
    if (isKey) {
      frame.keys.push(written);
      frame.key = written;
    } else {
      if (frame.is === 'list') frame.items.push(written);
      frame.done = true;
    }
  }

  #reach(token: Span | 'none', quote: '' | '"' | "'" = '', hasColon = false): void {
    if (this.#place !== undefined) return;
    const frame = this.#open.at(-1);
    if (token === 'none' || frame === undefined || frame.done) {
      this.#place = 'none';
      return;
    }
    // The frames go on collecting what stands behind the cursor.
    const frames = this.#open.map(({ is, key, keys, items }) => ({ is, key, keys, items }));
    this.#place = { frames, token, quote, hasColon };
    frame.done = true;
  }

  #plainEnd(at: number): number {
    let end = at;
    for (let i = at; i < this.end; i++) {
      const char = this.text.charAt(i);
      if (',[]{}\n\r'.includes(char)) break;
      if (char === '#' && /\s/.test(this.text.charAt(i - 1))) break;
      if (char === ':' && (i + 1 >= this.end || /[\s,[\]{}]/.test(this.text.charAt(i + 1)))) break;
      if (!/\s/.test(char)) end = i + 1;
    }
    return Math.max(end, at + 1);
  }

  /** Behind the closing quote; at the end of the line where nobody has closed it. */
  #quotedEnd(at: number, quote: string): number {
    for (let i = at + 1; i < this.end; i++) {
      const char = this.text.charAt(i);
      if (char === '\\' && quote === '"') i++;
      else if (char === quote && this.text.charAt(i + 1) === quote && quote === "'") i++;
      else if (char === quote) return i + 1;
      else if (char === '\n' || char === '\r') return i;
    }
    return this.end;
  }
}
