import type { ItemRange } from '../../../syntax/node';
import type { SyntaxDocument } from '../../../syntax/readDocument';
import type { TextEdit } from '../../../text/span';
import { newlineOf } from '../newline';
import { wholeLines } from '../removeEdit';

/** An entry of a list that stands on lines of its own, behind its own dash, with the remarks that belong to it. */
export interface Block {
  readonly start: number;
  readonly end: number;
  /** What stands before its dash, and between the dash and what it holds. */
  readonly indent: string;
  readonly gap: string;
}

/** The lines of an instruction or step; undefined where it is laid out in a way that only a person should change. */
export function blockOf(document: SyntaxDocument, node: ItemRange): Block | undefined {
  const { text } = document;
  const span = document.spanOf(node);
  const lines = wholeLines(text, span);
  const dash = /^( *)-( +)$/.exec(text.slice(lines.start, span.start));
  if (dash === null) return undefined;
  const [, indent = '', gap = ' '] = dash;
  return {
    start: withRemarksAbove(text, lines.start, indent),
    end: withRemarksBelow(text, lines.end, indent),
    indent,
    gap,
  };
}

/** Remarks right above an entry, at the height of its dash, speak of it. */
function withRemarksAbove(text: string, start: number, indent: string): number {
  let at = start;
  while (at > 0) {
    const above = text.lastIndexOf('\n', at - 2) + 1;
    if (!text.startsWith(`${indent}#`, above)) break;
    at = above;
  }
  return at;
}

/** Remarks behind an entry that stand deeper than its dash belong to it as well. */
function withRemarksBelow(text: string, end: number, indent: string): number {
  let at = end;
  while (at < text.length && /^ *#/.test(text.slice(at, lineEnd(text, at))) && text.startsWith(`${indent} `, at))
    at = lineEnd(text, at);
  return at;
}

function lineEnd(text: string, at: number): number {
  const newline = text.indexOf('\n', at);
  return newline < 0 ? text.length : newline + 1;
}

/** What a list entry holds, line by line: `['clean: cap-nut', 'using: degreaser']`. */
export type EntryLines = readonly string[];

/** New entries before or behind one, laid out as it is. */
export function insertion(
  { text }: SyntaxDocument,
  beside: Block,
  side: 'before' | 'behind',
  entries: readonly EntryLines[],
): TextEdit {
  const newline = newlineOf(text);
  const deeper = `${beside.indent} ${beside.gap}`;
  const lines = entries.flatMap((entry) =>
    entry.map((line, i) => (i === 0 ? `${beside.indent}-${beside.gap}${line}` : `${deeper}${line}`)),
  );
  return placed(text, side === 'before' ? beside.start : beside.end, lines.map((line) => line + newline).join(''));
}

/** Takes the lines of an entry to another place of the text. Only where both lists are indented alike. */
export function move(
  { text }: SyntaxDocument,
  moved: Block,
  beside: Block,
  side: 'before' | 'behind',
): readonly TextEdit[] | undefined {
  if (moved.indent !== beside.indent) return undefined;
  const at = side === 'before' ? beside.start : beside.end;
  if (at > moved.start && at < moved.end) return undefined;
  const lines = text.slice(moved.start, moved.end);
  const whole = lines.endsWith('\n') ? lines : `${lines}${newlineOf(text)}`;
  return [removal(moved), placed(text, at, whole)];
}

export function removal({ start, end }: Block): TextEdit {
  return { span: { start, end }, text: '' };
}

/** Lines at an offset; the last line of a text may have no end. */
function placed(text: string, at: number, lines: string): TextEdit {
  const span = { start: at, end: at };
  if (at < text.length || text.endsWith('\n')) return { span, text: lines };
  const newline = newlineOf(text);
  return { span, text: newline + lines.slice(0, -newline.length) };
}
