import type { Cut, CutPlan } from './cutPlan';
import { type Line, opensListEntry } from './lines';

/**
 * The document cut by lines alone. A leaf is text to be read alone; an opened key stands on its own line and holds the
 * pieces below it; an entry of a list holds the pieces of the map that it is.
 */
export type Piece =
  | { readonly kind: 'leaf'; readonly first: number; readonly end: number; readonly misplaced: boolean }
  | {
      readonly kind: 'opened';
      readonly line: number;
      readonly container: 'map' | 'list';
      readonly pieces: readonly Piece[];
    }
  | { readonly kind: 'entry'; readonly pieces: readonly Piece[] };

interface Region {
  readonly first: number;
  readonly end: number;
}

/** Cuts the lines of a document; the same lines always give the same pieces, whatever stood there before. */
export function split(text: string, lines: readonly Line[], plan: CutPlan): Piece[] {
  const splitter = new Splitter(text, lines);
  const region = { first: 0, end: lines.length };
  const start = splitter.firstContent(region);
  if (start === undefined) return [];
  return splitter.map(region, lines[start]?.indent ?? 0, plan, false);
}

class Splitter {
  constructor(
    readonly text: string,
    readonly lines: readonly Line[],
  ) {}

  /** Cuts a map at its keys. `dashed`: its first key stands behind the dash of the list entry that it is. */
  map(region: Region, indent: number, plan: CutPlan, dashed: boolean): Piece[] {
    const starts = this.#starts(
      region,
      (line, index) => (dashed && index === region.first) || this.#isKey(line, indent),
    );
    const first = this.firstContent(region);
    if (first !== undefined && starts[0] !== first) starts.unshift(first);
    return this.#regions(starts, region.end).flatMap((entry) => this.#entry(entry, indent, plan));
  }

  #entry(entry: Region, indent: number, plan: CutPlan): Piece[] {
    const key = this.#openKey(entry.first);
    const cut = key === undefined ? undefined : plan[key];
    const inside = { first: entry.first + 1, end: entry.end };
    const child = this.firstContent(inside);
    const line = child === undefined ? undefined : this.lines[child];
    if (cut === undefined || line === undefined) return [this.#leaf(entry)];
    if (cut === 'entries') {
      if (line.indent <= indent || opensListEntry(this.text, line) || isFlowStart(line)) return [this.#leaf(entry)];
      const pieces = this.map(inside, line.indent, {}, false);
      return [{ kind: 'opened', line: entry.first, container: 'map', pieces }];
    }
    if (!opensListEntry(this.text, line) || line.indent < indent) return [this.#leaf(entry)];
    return [
      { kind: 'opened', line: entry.first, container: 'list', pieces: this.#list(inside, line.indent, indent, cut) },
    ];
  }

  /** Cuts a list at its dashes; a dash that stands too far left still opens an entry, and is said to be misplaced. */
  #list(region: Region, indent: number, parentIndent: number, cut: Cut): Piece[] {
    const isStart = (line: Line): boolean =>
      line.indent <= indent && line.indent >= parentIndent && opensListEntry(this.text, line);
    const regions = this.#regions(this.#starts(region, isStart), region.end);
    return regions.map((entry): Piece => {
      const misplaced = this.lines[entry.first]?.indent !== indent;
      if (cut === 'items' || cut === 'entries' || misplaced) return this.#leaf(entry, misplaced);
      return { kind: 'entry', pieces: this.map(entry, this.#indentBehindDash(entry.first), cut, true) };
    });
  }

  firstContent(region: Region): number | undefined {
    for (let i = region.first; i < region.end; i++) if (this.lines[i]?.trivia === false) return i;
    return undefined;
  }

  #starts(region: Region, isStart: (line: Line, index: number) => boolean): number[] {
    const starts: number[] = [];
    for (let i = region.first; i < region.end; i++) {
      const line = this.lines[i];
      if (line !== undefined && !line.trivia && isStart(line, i)) starts.push(i);
    }
    return starts;
  }

  #regions(starts: readonly number[], end: number): Region[] {
    return starts.map((first, i) => ({ first, end: starts[i + 1] ?? end }));
  }

  #isKey(line: Line, indent: number): boolean {
    if (line.indent > indent || line.first === '\t' || line.first === '}' || line.first === ']') return false;
    return !opensListEntry(this.text, line);
  }

  /** The key of a line that holds a key and nothing else, so that what it holds stands on the lines below. */
  #openKey(index: number): string | undefined {
    const line = this.lines[index];
    if (line === undefined) return undefined;
    return /^[ ]*(?:-[ ]+)?([\w-]+):[ \t]*(?:#.*)?$/.exec(this.text.slice(line.start, line.end))?.[1];
  }

  #indentBehindDash(index: number): number {
    const line = this.lines[index];
    if (line === undefined) return 0;
    let at = line.start + line.indent + 1;
    while (at < line.end && this.text.charCodeAt(at) === 32) at++;
    return at - line.start;
  }

  /** Comments and blank lines behind an item belong to no item, unless they stand deep enough to be part of a text. */
  #leaf(region: Region, misplaced = false): Piece {
    const indent = this.lines[region.first]?.indent ?? 0;
    let end = region.end;
    while (end > region.first + 1) {
      const line = this.lines[end - 1];
      if (line === undefined || !line.trivia || (line.first !== '' && line.indent > indent)) break;
      end--;
    }
    return { kind: 'leaf', first: region.first, end, misplaced };
  }
}

function isFlowStart(line: Line): boolean {
  return line.first === '{' || line.first === '[';
}
