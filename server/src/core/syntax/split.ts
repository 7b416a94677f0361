import type { Cut, CutPlan } from './cutPlan';
import type { SafeText } from './disarm';
import { hasMark, type Lines, lineEnd, Mark } from './lines';

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

/**
 * Cuts the lines of a document; the same lines always give the same pieces, whatever stood there before. All of it is cut
 * for every key that is pressed: one line may change where everything behind it belongs, and going through the numbers
 * costs less than knowing whether it does.
 */
export function split(text: SafeText, lines: Lines, plan: CutPlan): Piece[] {
  const splitter = new Splitter(text, lines);
  const region = { first: 0, end: lines.starts.length };
  const start = splitter.firstContent(region);
  if (start === undefined) return [];
  return splitter.map(region, lines.indents[start] ?? 0, plan, false);
}

class Splitter {
  constructor(
    readonly text: SafeText,
    readonly lines: Lines,
  ) {}

  /** Cuts a map at its keys. `dashed`: its first key stands behind the dash of the list entry that it is. */
  map(region: Region, indent: number, plan: CutPlan, dashed: boolean): Piece[] {
    const starts = this.#keyLines(region, indent, dashed);
    const first = this.firstContent(region);
    if (first !== undefined && starts[0] !== first) starts.unshift(first);
    return starts.map((start, i) => this.#entry({ first: start, end: starts[i + 1] ?? region.end }, indent, plan));
  }

  #entry(entry: Region, indent: number, plan: CutPlan): Piece {
    const key = this.#openKey(entry.first);
    const cut = key === undefined ? undefined : plan[key];
    const inside = { first: entry.first + 1, end: entry.end };
    const child = this.firstContent(inside);
    if (cut === undefined || child === undefined) return this.#leaf(entry);
    const childIndent = this.lines.indents[child] ?? 0;
    const isList = this.#is(child, Mark.DASH);
    if (cut === 'entries') {
      if (childIndent <= indent || isList || this.#is(child, Mark.FLOW)) return this.#leaf(entry);
      const pieces = this.map(inside, childIndent, {}, false);
      return { kind: 'opened', line: entry.first, container: 'map', pieces };
    }
    if (!isList || childIndent < indent) return this.#leaf(entry);
    return {
      kind: 'opened',
      line: entry.first,
      container: 'list',
      pieces: this.#list(inside, childIndent, indent, cut),
    };
  }

  /** Cuts a list at its dashes; a dash that stands too far left still opens an entry, and is said to be misplaced. */
  #list(region: Region, indent: number, parentIndent: number, cut: Cut): Piece[] {
    const starts = this.#dashLines(region, indent, parentIndent);
    return starts.map((first, i): Piece => {
      const entry = { first, end: starts[i + 1] ?? region.end };
      const misplaced = this.lines.indents[first] !== indent;
      if (cut === 'items' || cut === 'entries' || misplaced) return this.#leaf(entry, misplaced);
      return { kind: 'entry', pieces: this.map(entry, this.#indentBehindDash(first), cut, true) };
    });
  }

  firstContent(region: Region): number | undefined {
    for (let i = region.first; i < region.end; i++) if (!this.#is(i, Mark.TRIVIA)) return i;
    return undefined;
  }

  #keyLines(region: Region, indent: number, dashed: boolean): number[] {
    const { indents } = this.lines;
    const starts: number[] = [];
    for (let i = region.first; i < region.end; i++) {
      if (dashed && i === region.first && !this.#is(i, Mark.TRIVIA)) starts.push(i);
      // Nearly every line is indented more, so that is asked first.
      else if ((indents[i] ?? 0) <= indent && !this.#is(i, Mark.TRIVIA | Mark.NO_KEY | Mark.DASH)) starts.push(i);
    }
    return starts;
  }

  #dashLines(region: Region, indent: number, parentIndent: number): number[] {
    const { indents } = this.lines;
    const starts: number[] = [];
    for (let i = region.first; i < region.end; i++) {
      const own = indents[i] ?? 0;
      if (own <= indent && own >= parentIndent && this.#is(i, Mark.DASH)) starts.push(i);
    }
    return starts;
  }

  #is(line: number, mark: number): boolean {
    return hasMark(this.lines, line, mark);
  }

  /** The key of a line that holds a key and nothing else, so that what it holds stands on the lines below. */
  #openKey(index: number): string | undefined {
    return /^[ ]*(?:-[ ]+)?([\w-]+):[ \t]*(?:#.*)?$/.exec(this.#lineText(index))?.[1];
  }

  #lineText(index: number): string {
    return this.text.slice(this.lines.starts[index] ?? 0, lineEnd(this.lines, index));
  }

  #indentBehindDash(index: number): number {
    const line = this.#lineText(index);
    let at = (this.lines.indents[index] ?? 0) + 1;
    while (at < line.length && line.charCodeAt(at) === 32) at++;
    return at;
  }

  /** Comments and blank lines behind an item belong to no item, unless they stand deep enough to be part of a text. */
  #leaf(region: Region, misplaced = false): Piece {
    const { indents } = this.lines;
    const indent = indents[region.first] ?? 0;
    let { end } = region;
    while (end > region.first + 1 && this.#is(end - 1, Mark.TRIVIA)) {
      if (!this.#is(end - 1, Mark.BLANK) && (indents[end - 1] ?? 0) > indent) break;
      end--;
    }
    return { kind: 'leaf', first: region.first, end, misplaced };
  }
}
