import type { Item, ItemRange, MapNode } from '../../syntax/node';
import { quoted, quoteValueAt } from '../../syntax/quoteValue';
import { readItem } from '../../syntax/readItem';
import type { FixSafety } from '../finding';
import type { FixDraft } from '../ruleContext';

const TITLE = 'Put the text in quotes';

/** The fix that puts the value at a place in quotes; none where that mends nothing. */
export function quoteFix(range: ItemRange, safety: FixSafety = 'suggestion'): FixDraft[] {
  const edit = quoteValueAt(range.item, range.from);
  return edit === undefined ? [] : [{ title: TITLE, safety, edits: [edit] }];
}

/** The fix that puts exactly this stretch in quotes; none where the item would read no better with it. */
export function quoteRange(range: ItemRange, safety: FixSafety = 'suggestion'): FixDraft[] {
  const text = quoted(range.item.text.slice(range.from, range.to));
  return mends(range, text) ? [{ title: TITLE, safety, edits: [{ range, text }] }] : [];
}

/** Whether an item has fewer problems once a stretch of it is replaced. */
export function mends(range: ItemRange, text: string): boolean {
  const after = readItem(replaced(range.item, range, text)).problems.length;
  return after === 0 || after < range.item.problems.length;
}

function replaced(item: Item, range: ItemRange, text: string): string {
  return item.text.slice(0, range.from) + text + item.text.slice(range.to);
}

/** The rest of a line from an offset, without the white space at its end. */
export function restOfLine(item: Item, from: number): ItemRange {
  const newline = item.text.indexOf('\n', from);
  let to = newline < 0 ? item.text.length : newline;
  while (to > from && /\s/.test(item.text.charAt(to - 1))) to--;
  return { item, from, to };
}

/** The fix for a text within brackets that commas cut in pieces: all of it in quotes, from the value that it began as. */
export function quoteCut(map: MapNode, index: number): FixDraft[] {
  const start = map.pairs[index - 1]?.value;
  if (start === undefined || start.kind !== 'scalar' || start.style !== 'plain') return [];
  let last = index;
  // Further pieces without a value belong to the same text; a piece that is followed by a colon is a key.
  while (map.pairs[last + 1] !== undefined && map.pairs[last + 1]?.value === undefined) last++;
  const end = map.pairs[last]?.key;
  return end === undefined ? [] : quoteRange({ item: start.item, from: start.from, to: end.to });
}
