import type { Span } from '../../text/span';
import { entriesAround, keysAround, openersAbove } from './blockPath';
import { type FlowFrame, flowPlaceAt } from './flowPlace';
import { indentAt, isTriviaFrom, lineSpanAt, type OpenedLine, type Opener, openedLineAt, skipBlanks } from './openers';

/** One step from the root of a document to a place: into an entry of a list, or behind a key. */
export type PathStep =
  | { readonly is: 'entry'; readonly at: number | undefined; others(): readonly string[] }
  | { readonly is: 'key'; readonly name: string; others(): readonly string[] };

/**
 * How a place is laid out: behind a key on its line, behind a dash, on a line of its own, in brackets, or in a text
 * that began on a line above.
 */
export type Layout = 'behind-key' | 'behind-dash' | 'own-line' | 'flow' | 'text';

/** What is known of a cursor from the text around it alone, whatever state that is in. */
export interface CursorContext {
  readonly text: string;
  readonly offset: number;
  readonly steps: readonly PathStep[];
  /** `value` where it may be either: behind a dash and on a line of its own a map may begin. */
  readonly wants: 'key' | 'value';
  readonly layout: Layout;
  /** What a chosen item replaces, without quotes. It holds the cursor. */
  readonly token: Span;
  readonly quote: '' | '"' | "'";
  /** A colon follows the token already. */
  readonly hasColon: boolean;
  /** The column at which the keys of a map at this place stand. */
  readonly column: number;
  readonly lineIndent: number;
  /** The other keys of the map in which a key is wanted. */
  keys(): readonly string[];
}

/**
 * Tells where a cursor stands. It goes by lines and indentation, since the tree loses just the line that is being typed.
 * Undefined where nothing can be written but blanks or a comment.
 */
export function cursorContext(text: string, offset: number): CursorContext | undefined {
  return new CursorReader(text, offset).read();
}

class CursorReader {
  readonly #line: OpenedLine;
  /** Dashes and keys on the cursor's line, as far as it stands behind them. */
  readonly #passed: readonly Opener[];

  constructor(
    readonly text: string,
    readonly offset: number,
  ) {
    this.#line = openedLineAt(text, offset);
    this.#passed = this.#line.openers.filter((one) => (one.is === 'dash' ? one.end < offset : one.end <= offset));
  }

  read(): CursorContext | undefined {
    const { text, offset } = this;
    const from = this.#passed.at(-1)?.end ?? this.#line.start;
    const content = skipBlanks(text, from, this.#line.end);
    const start = Math.min(content, offset);
    const [first] = this.#passed;
    const column = (first?.at ?? start) - this.#line.start;
    const above = openersAbove(text, this.#line.start, column, first?.is === 'dash');
    const holder = above.findIndex((one) => hasOwnText(text, one));
    if (holder >= 0) return this.#inValue(above.slice(0, holder + 1), above[holder]?.content ?? offset, true);
    if (this.#isOutside(content)) return undefined;
    const chain = [...above, ...this.#passed];
    const begun = this.#valueBegunAbove(above);
    if (begun !== undefined) return this.#inValue(chain, begun, true);
    return this.#inValue(chain, start, false);
  }

  /** Between the dashes, right behind one, and in the indentation of a line with something on it. */
  #isOutside(content: number): boolean {
    if (this.#line.openers.some((one) => one.is === 'dash' && one.at < this.offset && this.offset <= one.end))
      return true;
    const inFront = this.offset < content && content < this.#line.end;
    return inFront && this.#passed.length === 0;
  }

  /** A bracket or a quote that stands on a line of its own below the key or dash, and is still open here. */
  #valueBegunAbove(above: readonly Opener[]): number | undefined {
    const last = above.at(-1);
    if (last === undefined || this.#passed.length > 0) return undefined;
    for (let at = lineSpanAt(this.text, last.at).end; at < this.#line.start; at = lineSpanAt(this.text, at).end) {
      const { start, end } = lineSpanAt(this.text, this.text.indexOf('\n', at) + 1);
      if (start >= this.#line.start) return undefined;
      at = start;
      if (isTriviaFrom(this.text, start, end)) continue;
      const content = start + indentAt(this.text, start, end);
      return '[{"\''.includes(this.text.charAt(content)) ? content : undefined;
    }
    return undefined;
  }

  #inValue(chain: readonly Opener[], start: number, isAbove: boolean): CursorContext | undefined {
    const char = start < this.offset ? this.text.charAt(start) : '';
    if (char === '[' || char === '{') return this.#inFlow(chain, start);
    if (char === '"' || char === "'") return this.#inQuotes(chain, start, char);
    const layout = isAbove ? 'text' : this.#layout();
    if (layout === 'text') return this.#inText(chain, start);
    if (char === '|' || char === '>' || '&*!%@`'.includes(char || ' ')) return undefined;
    return this.#inPlain(chain, start, layout);
  }

  #layout(): Layout {
    const last = this.#passed.at(-1);
    if (last === undefined) return 'own-line';
    return last.is === 'dash' ? 'behind-dash' : 'behind-key';
  }

  /** A text that began on a line above, plain or behind `|` or `>`: only its mentions can be completed. */
  #inText(chain: readonly Opener[], start: number): CursorContext | undefined {
    const isBlock = /[|>]/.test(this.text.charAt(start));
    if (!isBlock && /\s#/.test(this.text.slice(this.#line.start, this.offset))) return undefined;
    if (this.#line.start <= start) return undefined;
    const begin = Math.min(this.#line.start + this.#line.indent, this.offset);
    return this.#context(chain, { wants: 'value', layout: 'text', token: { start: begin, end: this.#line.end } });
  }

  #inQuotes(chain: readonly Opener[], start: number, quote: '"' | "'"): CursorContext | undefined {
    const body = new RegExp(quote === '"' ? '"(?:[^"\\\\]|\\\\.)*' : "'(?:[^']|'')*", 'sy');
    body.lastIndex = start;
    const end = start + (body.exec(this.text)?.[0].length ?? 1);
    const { end: lineEnd } = this.#line;
    if (this.offset > end) return undefined;
    const layout = start < this.#line.start ? 'text' : this.#layout();
    const token = {
      start: Math.max(start + 1, Math.min(this.#line.start + this.#line.indent, this.offset)),
      end: Math.min(end, lineEnd),
    };
    const hasColon = /^["']?\s*:/.test(this.text.slice(token.end, lineEnd));
    return this.#context(chain, { wants: hasColon ? 'key' : 'value', layout, token, quote, hasColon });
  }

  #inPlain(chain: readonly Opener[], start: number, layout: Layout): CursorContext | undefined {
    if (/(?:^|\s)#/.test(this.text.slice(start, this.offset))) return undefined;
    const rest = this.text.slice(start, this.#line.end);
    const end = Math.max(this.offset, start + rest.replace(/(?:^|\s+)#.*$/, '').trimEnd().length);
    const key = /^[^\s:,[\]{}]*/.exec(rest)?.[0].length ?? 0;
    const hasColon = /^\s*:(?:\s|$)/.test(rest.slice(key)) && layout !== 'behind-key';
    if (hasColon) {
      if (this.offset > start + key) return undefined;
      return this.#context(chain, { wants: 'key', layout, token: { start, end: start + key }, hasColon });
    }
    const isKey = layout === 'own-line' && !this.#mayBeValue(chain);
    return this.#context(chain, { wants: isKey ? 'key' : 'value', layout, token: { start, end } });
  }

  /** On a line of its own a value may stand below a key that has none; where keys or dashes stand already it is one of them. */
  #mayBeValue(chain: readonly Opener[]): boolean {
    const column = this.#column();
    return chain.length > 0 && keysAround(this.text, this.#line.start, column).length === 0;
  }

  #column(): number {
    const last = this.#passed.at(-1);
    const start = Math.min(skipBlanks(this.text, last?.end ?? this.#line.start, this.#line.end), this.offset);
    return start - this.#line.start;
  }

  #inFlow(chain: readonly Opener[], start: number): CursorContext | undefined {
    const column = chain.at(-1)?.column ?? 0;
    const place = flowPlaceAt(this.text, start, this.#flowEnd(column), this.offset);
    if (place === undefined) return undefined;
    const { frames, token, quote, hasColon } = place;
    const innermost = frames.at(-1);
    const wants = innermost?.is === 'map' && innermost.key === undefined ? 'key' : 'value';
    const steps = [...this.#stepsOf(chain), ...frames.flatMap(stepOfFrame)];
    return {
      ...this.#context(chain, { wants, layout: 'flow', token, quote, hasColon }),
      steps,
      keys: () => innermost?.keys ?? [],
    };
  }

  /** A bracket that nobody has closed ends where a line stands no deeper than what holds it. */
  #flowEnd(column: number): number {
    const { text } = this;
    for (let at = text.indexOf('\n', this.offset); at >= 0; at = text.indexOf('\n', at + 1)) {
      const { start, end } = lineSpanAt(text, at + 1);
      const indent = indentAt(text, start, end);
      const char = text.charAt(start + indent);
      if (!isTriviaFrom(text, start, end) && (indent <= column || char === '-') && !/[\]}]/.test(char)) return at;
    }
    return text.length;
  }

  #context(
    chain: readonly Opener[],
    found: Pick<CursorContext, 'wants' | 'layout' | 'token'> & Partial<CursorContext>,
  ): CursorContext {
    const column = this.#column();
    return {
      text: this.text,
      offset: this.offset,
      steps: this.#stepsOf(chain),
      quote: '',
      hasColon: false,
      column,
      lineIndent: this.#line.indent,
      keys: () => keysAround(this.text, this.#line.start, column),
      ...found,
    };
  }

  #stepsOf(chain: readonly Opener[]): PathStep[] {
    return chain.map((opener) => {
      const { start } = lineSpanAt(this.text, opener.at);
      const { column } = opener;
      if (opener.is === 'key')
        return { is: 'key', name: opener.name, others: () => keysAround(this.text, start, column) };
      return { is: 'entry', at: opener.at, others: () => entriesAround(this.text, start, column) };
    });
  }
}

function stepOfFrame({ is, key, keys, items }: FlowFrame): PathStep[] {
  if (is === 'list') return [{ is: 'entry', at: undefined, others: () => items }];
  return key === undefined ? [] : [{ is: 'key', name: key, others: () => keys.filter((one) => one !== key) }];
}

/** Whether a value begins on the line of a dash or key, so that what stands deeper below belongs to it. */
function hasOwnText(text: string, opener: Opener): boolean {
  const line = openedLineAt(text, opener.at);
  return line.openers.at(-1)?.at === opener.at && line.content < line.end && text.charAt(line.content) !== '#';
}
