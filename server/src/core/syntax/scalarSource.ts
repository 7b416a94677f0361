import type { ItemRange, ScalarNode } from './node';

/** The source range of a stretch of a scalar's text, given by offsets into that text. */
export function sourceRange(node: ScalarNode, from: number, to: number): ItemRange {
  const start = sourceOffset(node, from);
  const end = Math.max(start, to > from ? sourceOffset(node, to - 1) + 1 : start);
  return { item: node.item, from: start, to: Math.min(end, node.to) };
}

/** The source offset of the character at an offset into the scalar's text. */
export function sourceOffset(node: ScalarNode, offset: number): number {
  const source = node.item.text.slice(node.from, node.to);
  if (node.style === 'plain' && source === node.text) return node.from + offset;
  const map = offsetsOf(node);
  return map[Math.max(0, Math.min(offset, map.length - 1))] ?? node.from;
}

/** The offset into the scalar's text that a source offset within its range stands for. */
export function textOffset(node: ScalarNode, source: number): number {
  const map = offsetsOf(node);
  let index = 0;
  while (index + 1 < map.length && (map[index + 1] ?? 0) <= source) index++;
  return index;
}

const remembered = new WeakMap<ScalarNode, readonly number[]>();

function offsetsOf(node: ScalarNode): readonly number[] {
  const known = remembered.get(node);
  if (known !== undefined) return known;
  const offsets = new Alignment(node).offsets();
  remembered.set(node, offsets);
  return offsets;
}

/** Walks the text of a scalar and its source side by side: escapes, folded lines and indentation take more source than text. */
class Alignment {
  readonly #source: string;
  readonly #node: ScalarNode;
  #at: number;

  constructor(node: ScalarNode) {
    this.#node = node;
    this.#source = node.item.text.slice(0, node.to);
    this.#at = node.from;
    if (node.style === 'single' || node.style === 'double') this.#at++;
    if (isBlock(node)) this.#at = this.#afterLine();
  }

  offsets(): number[] {
    const offsets: number[] = [];
    if (isBlock(this.#node)) this.#skipIndent();
    for (let i = 0; i < this.#node.text.length; ) i += this.#step(this.#node.text, i, offsets);
    offsets.push(Math.min(this.#at, this.#node.to));
    return offsets;
  }

  /** Places one character, or a run of them that comes from one line break; says how many. */
  #step(text: string, index: number, offsets: number[]): number {
    const wanted = text.charAt(index);
    if (this.#node.style === 'double' && this.#source.charAt(this.#at) === '\\') return this.#escape(offsets);
    if ((wanted === '\n' || wanted === ' ') && this.#atFold()) return this.#fold(text, index, offsets);
    offsets.push(this.#at);
    const quotedTwice = this.#node.style === 'single' && wanted === "'";
    this.#at += quotedTwice ? 2 : 1;
    return 1;
  }

  #escape(offsets: number[]): number {
    const code = this.#source.charAt(this.#at + 1);
    if (code === '\n' || code === '\r') {
      this.#at = this.#afterLine();
      this.#skipIndent();
      return 0;
    }
    const digits = code === 'x' ? 2 : code === 'u' ? 4 : code === 'U' ? 8 : 0;
    offsets.push(this.#at);
    this.#at = Math.min(this.#at + 2 + digits, this.#source.length);
    return 1;
  }

  /** Whether only spaces stand between here and the line's end. */
  #atFold(): boolean {
    for (let i = this.#at; i < this.#source.length; i++) {
      const char = this.#source.charAt(i);
      if (char === '\n') return true;
      if (char !== ' ' && char !== '\t' && char !== '\r') return false;
    }
    return false;
  }

  /**
   * A line break in the source. A literal text keeps each one; elsewhere one break became a space and more of them one
   * break less. All characters that it became are placed where it starts.
   */
  #fold(text: string, index: number, offsets: number[]): number {
    const start = this.#at;
    if (this.#node.style === 'literal') {
      offsets.push(start);
      this.#nextLine();
      return 1;
    }
    if (isBlock(this.#node)) this.#nextLine();
    while (
      this.#at < this.#source.length &&
      (isBlock(this.#node) ? this.#atFold() : /\s/.test(this.#source.charAt(this.#at)))
    ) {
      if (isBlock(this.#node)) this.#nextLine();
      else this.#at++;
    }
    let taken = 1;
    while (text.charAt(index) === '\n' && text.charAt(index + taken) === '\n') taken++;
    for (let i = 0; i < taken; i++) offsets.push(start);
    return taken;
  }

  #nextLine(): void {
    this.#at = this.#afterLine();
    this.#skipIndent();
  }

  #afterLine(): number {
    const newline = this.#source.indexOf('\n', this.#at);
    return newline < 0 ? this.#source.length : newline + 1;
  }

  #skipIndent(): void {
    const indent = isBlock(this.#node) ? blockIndent(this.#node) : Number.POSITIVE_INFINITY;
    let skipped = 0;
    while (skipped < indent && this.#source.charAt(this.#at) === ' ') {
      this.#at++;
      skipped++;
    }
  }
}

function isBlock(node: ScalarNode): boolean {
  return node.style === 'literal' || node.style === 'folded';
}

/** The indentation of a block text: that of its first line with something on it. */
function blockIndent(node: ScalarNode): number {
  const body = node.item.text.slice(node.item.text.indexOf('\n', node.from) + 1, node.to);
  return /^(?:[ ]*\r?\n)*([ ]*)\S/.exec(body)?.[1]?.length ?? 0;
}
