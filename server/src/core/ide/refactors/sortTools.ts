import { type ListNode, type Node, pairOf } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Span, TextEdit } from '../../text/span';
import { compareIds } from '../toolOrder';
import type { Refactor } from './refactor';

/**
 * Sorts the list of tools of a procedure. A remark on the line of an entry stays with it; a line that is a remark alone,
 * or empty, heads the entries below it, which are sorted among themselves. Undefined where there is nothing to sort.
 */
export function sortTools(document: SyntaxDocument): Refactor | undefined {
  const list = document.root === undefined ? undefined : pairOf(document.root, 'tools')?.value;
  if (document.kind !== 'procedure' || list?.kind !== 'list') return undefined;
  const edits = list.flow ? sortedSlots(list, document) : sortedLines(list, document);
  if (edits.length === 0) return undefined;
  return { id: 'sort-tools', kind: 'sort-tools', title: 'Sort the list of tools', edits: () => edits };
}

/** Between brackets each entry takes the place of another; remarks there speak of places and not of entries. */
function sortedSlots(list: ListNode, document: SyntaxDocument): TextEdit[] {
  const spans = list.items.map((item) => document.spanOf(item));
  const [first, last] = [spans[0], spans.at(-1)];
  if (first === undefined || last === undefined || document.text.slice(first.start, last.end).includes('#')) return [];
  return reordered(document.text, spans, list.items);
}

function sortedLines(list: ListNode, document: SyntaxDocument): TextEdit[] {
  return groupsOf(list, document).flatMap((items) => {
    const spans = items.map((item) => toLineEnd(document.text, document.spanOf(item)));
    return reordered(document.text, spans, items);
  });
}

/** Entries that follow each other line by line. */
function groupsOf({ items }: ListNode, { text, spanOf }: SyntaxDocument): Node[][] {
  const groups: Node[][] = [];
  let end: number | undefined;
  for (const item of items) {
    const span = toLineEnd(text, spanOf(item));
    const between = end === undefined ? '' : text.slice(end, spanOf(item).start);
    if (end === undefined || !/^\r?\n *-[ \t]+$/.test(between)) groups.push([item]);
    else groups.at(-1)?.push(item);
    end = span.end;
  }
  return groups;
}

/** An entry with the remark behind it. */
function toLineEnd(text: string, { start, end }: Span): Span {
  const newline = text.indexOf('\n', end);
  const line = text.slice(end, newline < 0 ? text.length : newline);
  return { start, end: end + line.trimEnd().length };
}

function reordered(text: string, spans: readonly Span[], items: readonly Node[]): TextEdit[] {
  const ids = items.map((item) => (item.kind === 'scalar' ? item.text : undefined));
  if (ids.includes(undefined)) return [];
  const sorted = [...ids.keys()].sort((a, b) => compareIds(ids[a] ?? '', ids[b] ?? ''));
  return spans.flatMap((span, place) => {
    const from = spans[sorted[place] ?? place];
    return from === undefined || from === span ? [] : [{ span, text: text.slice(from.start, from.end) }];
  });
}
