import { readDocument, type SyntaxDocument } from '../../syntax/readDocument';
import { ReadingMemo } from '../../syntax/readingMemo';
import type { Span, TextEdit } from '../../text/span';
import { BlockMaker } from './blocks';
import { DocumentPrinter } from './documentPrinter';
import { firstLine, Layout, type LineRange } from './layout';
import { isBlank, type Line } from './line';

import { isSameTree } from './sameMeaning';
import { documentShape } from './shapeBelow';
import { textDifference } from './textDifference';
import type { Wanted } from './wanted';

/**
 * The edits that format a whole document: indentation, spacing, the order of keys, standard unit symbols. What it says
 * stays the same, or nothing is done; an item that is broken stays as it is.
 */
export function formatDocument(document: SyntaxDocument): TextEdit[] {
  const layout = new Layout(document);
  const all = { first: 0, end: layout.lines.length };
  return editsFor(document, layout, all, 'free') ?? editsFor(document, layout, all, 'fixed') ?? [];
}

/** The edits that format the items of which some line lies in a span; no other line changes. */
export function formatRange(document: SyntaxDocument, span: Span): TextEdit[] {
  const layout = new Layout(document);
  return editsFor(document, layout, linesWithin(layout, span), 'fixed') ?? [];
}

/** A span that ends where a line starts does not hold that line. */
function linesWithin({ lines }: Layout, { start, end }: Span): LineRange {
  const first = lines.findLastIndex((line) => line.start <= start);
  const last = lines.findLastIndex((line) => line.start < end);
  return { first: Math.max(0, first), end: Math.max(first, last) + 1 };
}

/** Undefined where the formatted document would not read as the same. */
function editsFor(
  document: SyntaxDocument,
  layout: Layout,
  range: LineRange,
  structure: Wanted['structure'],
): TextEdit[] | undefined {
  if (layout.isMixed || document.root === undefined) return undefined;
  const text = textOf(document, layout, { ...range, structure });
  if (text === document.text) return [];
  return isProven(document, text) ? textDifference(document.text, text) : undefined;
}

function textOf({ kind, text }: SyntaxDocument, layout: Layout, wanted: Wanted): string {
  const shape = documentShape(kind);
  const { pieces } = layout;
  const column = pieces[0] === undefined ? 0 : (layout.lines[firstLine(pieces[0])]?.indent ?? 0);
  const blocks = new BlockMaker(layout, wanted).blocks(pieces, 'map', shape);
  const lines = new DocumentPrinter(layout, wanted).lines(blocks, column, shape);
  const mark = text.charCodeAt(0) === 0xfeff ? text.charAt(0) : '';
  return mark + joined(lines, lineEndOf(text));
}

/** Blank lines at the end go, but those that are kept. */
function joined(lines: readonly Line[], lineEnd: string): string {
  const end = lines.findLastIndex((line) => line.is === 'kept' || !isBlank(line)) + 1;
  return lines
    .slice(0, end)
    .map((line) => line.text + (line.is === 'kept' ? line.lineEnd : lineEnd))
    .join('');
}

/** The line end that most lines have. */
function lineEndOf(text: string): string {
  const all = text.split('\n').length - 1;
  return (text.match(/\r\n/g)?.length ?? 0) * 2 > all ? '\r\n' : '\n';
}

/** Reads the new text, items that did not change not again, and compares. */
function isProven(document: SyntaxDocument, text: string): boolean {
  const after = readDocument(document.uri, document.kind, text, ReadingMemo.of(document.reading));
  const problems = ({ problems }: SyntaxDocument) =>
    problems
      .map(({ kind }) => kind)
      .sort()
      .join();
  return isSameTree(document.root, after.root, documentShape(document.kind)) && problems(document) === problems(after);
}
