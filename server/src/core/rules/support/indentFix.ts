import type { ItemRange } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { FixDraft } from '../ruleContext';
import { mends } from './quoteFix';

/** The fix that indents a line with spaces where tabs do it; none where the item would read no better. */
export function indentFix(document: SyntaxDocument, range: ItemRange): FixDraft[] {
  const { item } = range;
  if (item.text.charAt(range.from) !== '\t') return [];
  const lineStart = item.text.lastIndexOf('\n', range.from - 1) + 1;
  const blank = /^[ \t]*/.exec(item.text.slice(lineStart))?.[0] ?? '';
  if (lineStart + blank.length <= range.from) return spaceFix(range);
  const indent = { item, from: lineStart, to: lineStart + blank.length };
  const spaces = ' '.repeat(indentBelow(document, document.spanOf(indent).start));
  return mends(indent, spaces) ? [{ title: 'Indent with spaces', edits: [{ range: indent, text: spaces }] }] : [];
}

/** A tab behind a dash stands where one space belongs. */
function spaceFix(range: ItemRange): FixDraft[] {
  const tabs = /^\t+/.exec(range.item.text.slice(range.from))?.[0].length ?? 1;
  const run = { item: range.item, from: range.from, to: range.from + tabs };
  return mends(run, ' ') ? [{ title: 'Write a space', edits: [{ range: run, text: ' ' }] }] : [];
}

/** How far a line belongs in: as far as the line before it, or two more where that one opens something. */
function indentBelow(document: SyntaxDocument, lineStart: number): number {
  const before = document.text.slice(0, lineStart).trimEnd();
  const line = before.slice(before.lastIndexOf('\n') + 1);
  const indent = /^[ \t]*/.exec(line)?.[0].replaceAll('\t', '  ').length ?? 0;
  return line.endsWith(':') ? indent + 2 : indent;
}
