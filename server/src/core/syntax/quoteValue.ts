import type { Item, ItemRange } from './node';
import { readItem } from './readItem';

/** A change within one item. */
export interface ItemEdit {
  readonly range: ItemRange;
  readonly text: string;
}

/**
 * The edit that puts a value in quotes: from where it starts on its line to the line's end, or to the bracket or comma
 * that ends it. Undefined where the item would read no better with it.
 */
export function quoteValueAt(item: Item, offset: number): ItemEdit | undefined {
  const line = lineAround(item.text, offset);
  for (const range of candidates(item, line, offset)) {
    const raw = item.text.slice(range.from, range.to);
    if (raw === '') continue;
    const text = quoted(raw);
    const after = readItem(item.text.slice(0, range.from) + text + item.text.slice(range.to));
    if (after.problems.length < item.problems.length || after.problems.length === 0) return { range, text };
  }
  return undefined;
}

/** A text as a quoted scalar: in double quotes, or in single ones where it holds double quotes or backslashes. */
export function quoted(text: string): string {
  if (!/["\\]/.test(text)) return `"${text}"`;
  return `'${text.replaceAll("'", "''")}'`;
}

function lineAround(text: string, offset: number): { from: number; to: number } {
  const from = text.lastIndexOf('\n', offset - 1) + 1;
  const newline = text.indexOf('\n', offset);
  let to = newline < 0 ? text.length : newline;
  while (to > from && /\s/.test(text.charAt(to - 1))) to--;
  return { from, to };
}

/** The whole value of the line first; then, inside brackets, from the last key or comma to the next comma or bracket. */
function candidates(item: Item, line: { from: number; to: number }, offset: number): ItemRange[] {
  const text = item.text.slice(line.from, line.to);
  const head = /^\s*(?:-\s+)*(?:[\w-]+:\s+)?/.exec(text)?.[0].length ?? 0;
  const whole = { item, from: line.from + head, to: line.to };
  const openers = /^[{[]/.test(item.text.slice(whole.from));
  if (!openers) return [whole, ...dashOnly(item, line)];
  const before = item.text.slice(line.from, offset);
  const start = /^[\s\S]*(?:[{[,]|\w:)\s+/.exec(before)?.[0].length ?? head;
  const from = line.from + start;
  const closers = [...item.text.slice(offset, line.to).matchAll(/,(?=\s+[\w-]+:\s)|\s*[}\]]/g)];
  return [...closers.map((match) => ({ item, from, to: offset + match.index })), whole];
}

/** A list entry that reads as a key and a value was meant as one text. */
function dashOnly(item: Item, line: { from: number; to: number }): ItemRange[] {
  const head = /^\s*(?:-\s+)+/.exec(item.text.slice(line.from, line.to))?.[0].length;
  return head === undefined ? [] : [{ item, from: line.from + head, to: line.to }];
}
