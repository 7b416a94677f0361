import type { Snapshot } from '../../server/src/core/analysis/snapshot';
import { Workspace } from '../../server/src/core/analysis/workspace';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import type { Span } from '../../server/src/core/text/span';
import { MemoryFiles } from './memoryFiles';

/** Where the cursor stands in a text. */
export const CURSOR = '‸';

/** A stretch of one of the files. */
export interface Place {
  readonly path: string;
  readonly span: Span;
}

/** Files with one cursor and with the places that are expected, all marks taken out. */
export interface MarkedFiles {
  readonly files: Readonly<Record<string, string>>;
  readonly at: string;
  readonly offset: number;
  /** What stood in `⟦…⟧`, by file and in the order of the text. */
  readonly places: readonly Place[];
}

/** Reads `‸` and `⟦…⟧` out of texts by path. The marks may stand in each other: the cursor in an expected place. */
export function readMarks(marked: Readonly<Record<string, string>>): MarkedFiles {
  const files: Record<string, string> = {};
  const places: Place[] = [];
  const cursors: { at: string; offset: number }[] = [];
  for (const [path, source] of Object.entries(marked)) {
    const open: number[] = [];
    let text = '';
    for (const char of source) {
      if (char === CURSOR) cursors.push({ at: path, offset: text.length });
      else if (char === '⟦') open.push(text.length);
      else if (char === '⟧') places.push({ path, span: { start: open.pop() ?? 0, end: text.length } });
      else text += char;
    }
    files[path] = text;
  }
  const [cursor, second] = cursors;
  if (cursor === undefined || second !== undefined) throw new Error(`${cursors.length} cursors, and not one`);
  return { files, ...cursor, places: sorted(places) };
}

/** The texts with places marked: what a test compares, so that a failure shows the text. */
export function writeMarks(files: Readonly<Record<string, string>>, places: readonly Place[]): Record<string, string> {
  return Object.fromEntries(
    Object.entries(files).flatMap(([path, text]) => {
      const here = places.filter((place) => place.path === path);
      return here.length === 0 ? [] : [[path, markedIn(text, here)]];
    }),
  );
}

function markedIn(text: string, places: readonly Place[]): string {
  const marks = places.flatMap(({ span }) => [
    { at: span.start, mark: '⟦', order: 1 },
    { at: span.end, mark: '⟧', order: 0 },
  ]);
  let marked = text;
  for (const { at, mark } of marks.sort((a, b) => b.at - a.at || b.order - a.order)) {
    marked = marked.slice(0, at) + mark + marked.slice(at);
  }
  return marked;
}

function sorted(places: readonly Place[]): Place[] {
  return [...places].sort((a, b) => (a.path === b.path ? a.span.start - b.span.start : a.path < b.path ? -1 : 1));
}

/** The same files as other editors write them: with CR LF, and behind a comment with a character of two units. */
export function variantsOf(marked: Readonly<Record<string, string>>): Readonly<Record<string, string>>[] {
  const changed = (change: (text: string) => string) =>
    Object.fromEntries(Object.entries(marked).map(([path, text]) => [path, change(text)]));
  return [marked, changed((text) => `# 🔧\n${text}`.replaceAll('\n', '\r\n'))];
}

export function pathOf(uri: string): string {
  return uri.slice(MemoryFiles.ROOT.length + 1);
}

/** A workspace in which all documents among the files are loaded, with what they link to. */
export async function loadAll(files: Readonly<Record<string, string>>): Promise<Snapshot> {
  const workspace = new Workspace([MemoryFiles.ROOT]);
  const source = new MemoryFiles(files);
  for (const path of Object.keys(files)) await workspace.loadLinked(`${MemoryFiles.ROOT}/${path}`, source);
  return workspace.snapshot;
}

export interface OpenedMarks {
  readonly marked: MarkedFiles;
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
}

/** Loads marked files and finds the document with the cursor. */
export async function openMarks(source: Readonly<Record<string, string>>): Promise<OpenedMarks> {
  const marked = readMarks(source);
  const snapshot = await loadAll(marked.files);
  const document = snapshot.document(`${MemoryFiles.ROOT}/${marked.at}`);
  if (document === undefined) throw new Error(`No document at ${marked.at}`);
  return { marked, snapshot, document };
}
