import type { Shape } from '../../model/shape';
import type { Block, EntryBlock, OpenedBlock } from './blocks';
import { type Entry, inKeyOrder } from './keyOrder';
import type { Layout } from './layout';
import { BLANK, dashed, indented, isBlank, isTrivia, type Line, set } from './line';
import { keysOf } from './shapeBelow';
import { remarkOf } from './triviaScan';
import { isInside, type Wanted } from './wanted';

const STEP = 2;

/** Writes a document anew from its blocks and, for what stands between them, its lines. */
export class DocumentPrinter {
  readonly #layout: Layout;
  readonly #wanted: Wanted;
  /** The first line that has not been written yet. */
  #next = 0;

  constructor(layout: Layout, wanted: Wanted) {
    this.#layout = layout;
    this.#wanted = wanted;
  }

  /** What stands above the first entry stays there, since it is about the whole document. */
  lines(blocks: readonly Block[], column: number, shape: Shape | undefined): Line[] {
    const top = this.#gap(blocks[0]?.first ?? 0);
    const body = this.#map(blocks, column, 0, shape);
    const rest = this.#gap(this.#layout.lines.length);
    return indented([...top, ...body, ...rest], isFixed(this.#wanted, blocks) ? column : 0);
  }

  #map(blocks: readonly Block[], column: number, floor: number, shape: Shape | undefined): Line[] {
    const entries = blocks.map((block): Entry => {
      const lead = this.#gap(block.first);
      return { key: block.key, lead, body: this.#body(block, column) };
    });
    const tail = this.#tail(Math.max(column, floor));
    const keys = isFixed(this.#wanted, blocks) ? undefined : keysOf(shape);
    return [...linesOf(keys === undefined ? entries : inKeyOrder(entries, keys)), ...tail];
  }

  #list(blocks: readonly Block[], column: number, floor: number): Line[] {
    const entries = blocks.map((block): Entry => {
      const lead = this.#gap(block.first);
      const lines = this.#body(block, column);
      // Comments of the key that has come to stand behind the dash stand above it.
      const opening = Math.max(
        0,
        lines.findIndex((line) => !isTrivia(line)),
      );
      const lifted = lines.slice(0, opening).filter((line) => !isBlank(line));
      const body = block.kind === 'entry' ? dashed(lines.slice(opening), gapOf(block)) : lines.slice(opening);
      return { key: undefined, lead: [...lead, ...lifted], body };
    });
    return [...linesOf(entries), ...this.#tail(Math.max(column, floor))];
  }

  #body(block: Block, column: number): readonly Line[] {
    if (block.kind === 'entry') return this.#map(block.blocks, block.column, 0, block.shape);
    if (block.kind === 'opened') return this.#opened(block, column);
    this.#next = block.end;
    return block.lines ?? this.#keptLines(block.first, block.end);
  }

  #opened(block: OpenedBlock, column: number): Line[] {
    const { first, key, comment, wanted, container, blocks, shape } = block;
    this.#next = first + 1;
    const remark = comment === '' ? '' : remarkOf(comment);
    const header = wanted ? [set(`${key}:${remark}`)] : this.#keptLines(first, first + 1);
    const inner =
      container === 'map'
        ? this.#map(blocks, block.column, column + 1, shape)
        : this.#list(blocks, block.column, column + 1);
    return [...header, ...indented(inner, block.fixed ? block.column - column : STEP)];
  }

  /** The comments and blank lines down to a line. */
  #gap(end: number): Line[] {
    const first = this.#next;
    this.#next = Math.max(first, end);
    return this.#trivia(first, end);
  }

  /** Comments behind a block that stand as deep as it does belong to it. */
  #tail(column: number): Line[] {
    const first = this.#next;
    let end = first;
    for (let i = first; i < this.#layout.lines.length; i++) {
      const line = this.#layout.lines[i];
      if (line?.trivia !== true) break;
      if (this.#layout.textOf(i).trim() === '') continue;
      if (line.indent < column) break;
      end = i + 1;
    }
    this.#next = end;
    return this.#trivia(first, end);
  }

  #trivia(first: number, end: number): Line[] {
    if (!isInside(this.#wanted, { first, end })) return this.#keptLines(first, end);
    const lines: Line[] = [];
    for (let i = first; i < end; i++) {
      const text = this.#layout.textOf(i).trim();
      if (text === '' && lines.at(-1)?.text === '') continue;
      // A start marker is no comment, and has to stand at the edge.
      if (text === '' || text.startsWith('#')) lines.push(text === '' ? BLANK : set(text));
      else lines.push(...this.#keptLines(i, i + 1));
    }
    return lines;
  }

  #keptLines(first: number, end: number): Line[] {
    const { length } = this.#layout.lines;
    return Array.from({ length: Math.min(end, length) - Math.min(first, length) }, (_, i) => ({
      is: 'kept',
      text: this.#layout.textOf(first + i),
      lineEnd: this.#layout.lineEndOf(first + i),
    }));
  }
}

function linesOf(entries: readonly Entry[]): Line[] {
  return entries.flatMap(({ lead, body }) => [...lead, ...body]);
}

function gapOf({ fixed, gap }: EntryBlock): number {
  return fixed ? gap : STEP;
}

function isFixed({ structure }: Wanted, blocks: readonly Block[]): boolean {
  return structure === 'fixed' || blocks.some(({ fixed }) => fixed);
}
