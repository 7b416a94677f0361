import type { ListNode, MapNode, Node } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Span } from '../../text/span';
import type { FixEdit } from '../ruleContext';

/** The edit that takes the value of a key, or one entry of its list, away; the key goes with its last entry. */
export function removeFromKey(document: SyntaxDocument, map: MapNode, key: string, entry: Node): FixEdit | undefined {
  const pair = map.pairs.find((one) => one.key.text === key);
  if (pair?.value === undefined) return undefined;
  const list = pair.value;
  if (list.kind === 'list' && list.items.length > 1) return removeEntry(document, list, entry);
  if (list !== entry && !(list.kind === 'list' && list.items.includes(entry))) return undefined;
  if (map.flow) return undefined;
  // The entries of a long list are read alone, and the list itself may then end before them.
  const end = Math.max(document.spanOf(list).end, document.spanOf(entry).end);
  const span = { start: document.spanOf(pair.key).start, end };
  return { document, span: wholeLines(document.text, span), text: '' };
}

/** The edit that takes an entry out of a list that has others. */
export function removeEntry(document: SyntaxDocument, list: ListNode, entry: Node): FixEdit | undefined {
  const at = list.items.indexOf(entry);
  if (at < 0) return undefined;
  const span = document.spanOf(entry);
  if (!list.flow) {
    const lines = wholeLines(document.text, span);
    // An entry that does not stand behind its own dash is left to a person.
    return /^\s*-\s+$/.test(document.text.slice(lines.start, span.start))
      ? { document, span: lines, text: '' }
      : undefined;
  }
  const before = list.items[at - 1];
  const next = list.items[at + 1];
  if (before !== undefined) return { document, span: { start: document.spanOf(before).end, end: span.end }, text: '' };
  if (next === undefined) return { document, span, text: '' };
  return { document, span: { start: span.start, end: document.spanOf(next).start }, text: '' };
}

/** The lines that a span stands on, with the break at their end. */
export function wholeLines(text: string, span: Span): Span {
  const end = span.start + text.slice(span.start, span.end).trimEnd().length;
  const newline = text.indexOf('\n', end);
  return { start: text.lastIndexOf('\n', span.start - 1) + 1, end: newline < 0 ? text.length : newline + 1 };
}
