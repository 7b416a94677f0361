import type { Shape } from '../../model/shape';
import type { Item, ListNode, MapNode, Node, Pair } from '../../syntax/node';
import { flowLines } from './flowLines';
import { type Entry, inKeyOrder } from './keyOrder';
import { dashed, indented, isBlank, isTrivia, type Line, set } from './line';
import { scalarLines } from './scalarLines';
import { keysOf, shapeBelow, shapeOfItems } from './shapeBelow';
import { columnOf, scanRemark, scanTrivia, type Trivia } from './triviaScan';

const STEP = 2;

/** Writes what stands in one item anew, from its tree and, for the comments between, its text. */
export class ItemPrinter {
  readonly #text: string;
  #at = 0;
  /** False once something stands where it was not expected; then nothing that was written is to be used. */
  sound = true;

  constructor(item: Item) {
    this.#text = item.text;
  }

  /** The only entry of an item, without its dash where it has one. */
  pair(pair: Pair, shape: Shape | undefined): Line[] {
    const lead = this.#trivia().concat(this.#takeDash() ? this.#trivia() : []);
    this.#expect(pair.key.from);
    const lines = [...linesFor(lead), ...this.#pair(pair, shape)];
    this.#finish();
    return lines;
  }

  /** The only entry of an item that is an entry of a list, with its dash. */
  listItem(node: Node, shape: Shape | undefined): Line[] {
    const lead = this.#trivia();
    const { above, body } = this.#listItem(node, shape);
    this.#finish();
    return [...linesFor(lead), ...above, ...body];
  }

  /** How much of the item was written: comments behind its last block may be about what comes next. */
  get written(): number {
    return this.#at;
  }

  #finish(): void {
    if (scanTrivia(this.#text, this.#at).next !== this.#text.length) this.sound = false;
  }

  #pair({ key, value }: Pair, shape: Shape | undefined): Line[] {
    const column = columnOf(this.#text, key.from);
    const name = this.#text.slice(key.from, key.to);
    this.#at = key.to;
    this.#takeColon();
    if (value === undefined) return [set(`${name}:${this.#remark()}`)];
    if (!isBlockCollection(value)) return this.#inline(`${name}:`, value, shape);
    const remark = this.#remark();
    return [set(`${name}:${remark}`), ...indented(this.#block(value, shape, column + 1), STEP)];
  }

  /** A block map or list; comments behind it are its own where they stand at least in column `floor` and its own column. */
  #block(node: MapNode | ListNode, shape: Shape | undefined, floor: number): Line[] {
    const entries = node.kind === 'map' ? this.#mapEntries(node, shape) : this.#listEntries(node, shape);
    const keys = keysOf(shape, node);
    const ordered = node.kind === 'map' && keys !== undefined ? inKeyOrder(entries, keys) : entries;
    const start = node.kind === 'map' ? (node.pairs[0]?.key.from ?? node.from) : node.from;
    const tail = this.#tail(Math.max(floor, columnOf(this.#text, start)));
    return [...ordered.flatMap(({ lead, body }) => [...lead, ...body]), ...tail];
  }

  #mapEntries(node: MapNode, shape: Shape | undefined): Entry[] {
    return node.pairs.map((pair) => {
      const lead = linesFor(this.#trivia());
      this.#expect(pair.key.from);
      return { key: pair.key.text, lead, body: this.#pair(pair, shapeBelow(shape, pair.key.text, node)) };
    });
  }

  #listEntries(node: ListNode, shape: Shape | undefined): Entry[] {
    return node.items.map((item) => {
      const lead = linesFor(this.#trivia());
      const { above, body } = this.#listItem(item, shapeOfItems(shape));
      return { key: undefined, lead: [...lead, ...above], body };
    });
  }

  /** An entry from its dash on. Comments that stood behind the dash come to stand above it. */
  #listItem(node: Node, shape: Shape | undefined): { above: Line[]; body: Line[] } {
    const column = columnOf(this.#text, this.#at);
    if (!this.#takeDash()) this.sound = false;
    if (!isBlockCollection(node)) {
      const above = comments(this.#trivia());
      return { above, body: this.#inline('-', node, shape) };
    }
    const before = comments(this.#trivia());
    const lines = this.#block(node, shape, column + 1);
    const opening = lines.findIndex((line) => !isTrivia(line));
    const lifted = lines.slice(0, Math.max(0, opening)).filter((line) => !isBlank(line));
    return { above: [...before, ...lifted], body: dashed(lines.slice(Math.max(0, opening)), STEP) };
  }

  /** A value that begins on the line of its key or dash, or alone on the next. */
  #inline(prefix: string, node: Node, shape: Shape | undefined): Line[] {
    const between = this.#text.slice(this.#at, node.from);
    const { remark, end } = between.includes('#') ? scanRemark(this.#text, this.#at) : { remark: '', end: this.#at };
    this.#at = end;
    const above = comments(this.#trivia());
    this.#expect(node.from);
    const [first = '', ...more] = this.#value(node, shape);
    const behind = this.#remark();
    const last = more.length === 0 ? [] : [...more.slice(0, -1), withRemark(more.at(-1) ?? '', node, behind)];
    const opening = more.length === 0 || isBlockScalar(node) ? first + behind : first;
    if (!between.includes('\n')) return [set(`${prefix} ${opening}`), ...last.map(set)];
    // A text on lines of its own is set in already; what is in brackets is set in by those alone.
    const below = indented(last.map(set), node.kind === 'scalar' ? 0 : STEP);
    return [set(prefix + remark), ...indented([...above, set(opening)], STEP), ...below];
  }

  /** The lines of a scalar or of something in brackets. */
  #value(node: Node, shape: Shape | undefined): readonly string[] {
    this.#at = node.to;
    if (node.kind !== 'scalar') return flowLines(node, shape);
    const scalar = scalarLines(node, shape);
    if (scalar === undefined) this.sound = false;
    else this.#at = scalar.end;
    return scalar?.lines ?? [];
  }

  #remark(): string {
    const { remark, end } = scanRemark(this.#text, this.#at);
    this.#at = end;
    return remark;
  }

  #trivia(): readonly Trivia[] {
    const { trivia, next } = scanTrivia(this.#text, this.#at);
    this.#at = next;
    return trivia;
  }

  /** Comments behind a block that stand as deep as it does belong to it. */
  #tail(column: number): Line[] {
    const { trivia } = scanTrivia(this.#text, this.#at);
    const shallow = trivia.findIndex((one) => one.text !== '' && one.column < column);
    const deep = shallow < 0 ? trivia : trivia.slice(0, shallow);
    const own = deep.slice(0, deep.findLastIndex((one) => one.text !== '') + 1);
    this.#at = own.at(-1)?.end ?? this.#at;
    return linesFor(own);
  }

  #takeDash(): boolean {
    const found = this.#text.charAt(this.#at) === '-' && /^\s?$/.test(this.#text.charAt(this.#at + 1));
    if (found) this.#at++;
    return found;
  }

  #takeColon(): void {
    while (/[ \t]/.test(this.#text.charAt(this.#at))) this.#at++;
    this.#expect(this.#text.indexOf(':', this.#at));
    this.#at++;
  }

  #expect(offset: number): void {
    if (this.#at !== offset) this.sound = false;
  }
}

function linesFor(trivia: readonly Trivia[]): Line[] {
  return trivia.map(({ text }) => set(text));
}

function comments(trivia: readonly Trivia[]): Line[] {
  return linesFor(trivia).filter((line) => !isBlank(line));
}

function isBlockCollection(node: Node): node is MapNode | ListNode {
  return node.kind !== 'scalar' && !node.flow;
}

function isBlockScalar(node: Node): boolean {
  return node.kind === 'scalar' && (node.style === 'literal' || node.style === 'folded');
}

/** A comment behind a block scalar stands behind its sign, and not behind its text. */
function withRemark(line: string, node: Node, remark: string): string {
  return isBlockScalar(node) ? line : line + remark;
}
