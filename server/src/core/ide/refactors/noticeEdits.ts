import { scalarText } from '../../rules/support/mapKey';
import { newlineOf } from '../../rules/support/newline';
import { removeEntry, wholeLines } from '../../rules/support/removeEdit';
import { type ItemRange, type MapNode, type Pair, pairOf } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Span, TextEdit } from '../../text/span';
import { endOfLine, entryBehind, indentOf, insertAt, spanOfPair, withRemarksAbove } from '../lineEdits';
import type { NoticeUse } from './noticeUses';

/** Keys of a step and of a phase that come before its notices, and the notices in their order. */
const BEFORE = ['step', 'phase', 'title', 'when', 'unless', 'sign', 'people', 'optional', 'figure'];
const NOTICES = ['warning', 'caution', 'notice'];

/** Takes a notice away with its key, or out of the list that it stands in. A remark on its line stays. */
export function removeNotice(document: SyntaxDocument, use: NoticeUse): TextEdit | undefined {
  const pair = pairOf(use.map, use.key);
  if (pair?.value === undefined) return undefined;
  if (pair.value.kind === 'list' && pair.value.items.length > 1) {
    const edit = removeEntry(document, pair.value, use.node);
    return edit !== undefined && 'span' in edit ? keepRemark(document, edit.span, use.node) : undefined;
  }
  const place = use.map.pairs.indexOf(pair);
  const span = spanOfPair(document, pair);
  const before = use.map.pairs[place - 1];
  const next = use.map.pairs[place + 1];
  if (before === undefined) return next === undefined ? undefined : upTo(document, span.start, next);
  if (use.map.flow) return { span: { start: spanOfPair(document, before).end, end: span.end }, text: '' };
  const head = document.text.slice(span.start, document.spanOf(use.node).start);
  return /(?:^|\s)#/.test(head) ? undefined : keepRemark(document, wholeLines(document.text, span), use.node);
}

/** The first key shares its line with the dash, or follows the bracket: the next one comes up to it. */
function upTo(document: SyntaxDocument, start: number, next: Pair): TextEdit | undefined {
  const { start: end } = document.spanOf(next.key);
  return /(?:^|\s)#/.test(document.text.slice(start, end)) ? undefined : { span: { start, end }, text: '' };
}

/** What is taken away by whole lines leaves the remark behind it. */
function keepRemark({ text, spanOf }: SyntaxDocument, span: Span, notice: ItemRange): TextEdit {
  const { start, end } = spanOf(notice);
  const filled = start + text.slice(start, end).trimEnd().length;
  const remark = text.slice(filled, endOfLine(text, filled)).trim();
  if (!remark.startsWith('#') || filled > span.end) return { span, text: '' };
  const indent = /^ */.exec(text.slice(span.start, span.end))?.[0] ?? '';
  return { span, text: `${indent}${remark}${newlineOf(text)}` };
}

/** Writes a notice at the head of a step or phase, beside those that are there. */
export function writeNotice(document: SyntaxDocument, map: MapNode, use: NoticeUse): readonly TextEdit[] | undefined {
  const source = sourceOf(use);
  const indent = indentOf(document, map);
  if (source === undefined || indent === undefined) return undefined;
  const pair = pairOf(map, use.key);
  if (pair?.value !== undefined) return beside(document, pair, indent, use, source);
  const earlier = [...BEFORE, ...NOTICES.slice(0, NOTICES.indexOf(use.key))];
  const behind = map.pairs.findLast(({ key }) => earlier.includes(key.text)) ?? map.pairs[0];
  if (behind === undefined) return undefined;
  const at = endOfLine(document.text, spanOfPair(document, behind).end);
  return [insertAt(at, `${newlineOf(document.text)}${indent}${use.key}: ${source}`)];
}

/** The head has a notice of the kind already: the two become a list. */
function beside(
  document: SyntaxDocument,
  { key, value }: Pair,
  indent: string,
  use: NoticeUse,
  source: string,
): readonly TextEdit[] | undefined {
  if (value?.kind === 'list') {
    const last = value.items.at(-1);
    if (last === undefined) return undefined;
    if (!value.flow) return [entryBehind(document, last, source)];
    return [insertAt(document.spanOf(last).end, `, ${scalarText(use.text)}`)];
  }
  if (value?.kind !== 'scalar') return undefined;
  const span = { start: document.spanOf(key).end + 1, end: document.spanOf(value).end };
  const written = document.text.slice(document.spanOf(value).start, span.end);
  if (written.includes('\n')) return undefined;
  const line = `${newlineOf(document.text)}${indent}  - `;
  return [{ span, text: line + written }, insertAt(endOfLine(document.text, span.end), line + source)];
}

/** Writes a notice among what must be known before the first step. */
export function writeBeforeYouStart(document: SyntaxDocument, use: NoticeUse): readonly TextEdit[] | undefined {
  const source = sourceOf(use);
  const { root, text } = document;
  if (source === undefined || root === undefined) return undefined;
  const list = pairOf(root, 'before-you-start')?.value;
  const last = list?.kind === 'list' ? list.items.at(-1) : undefined;
  if (list?.kind === 'list' && last !== undefined) {
    if (!list.flow) return [entryBehind(document, last, `${use.key}: ${source}`)];
    return [insertAt(document.spanOf(last).end, `, { ${use.key}: ${scalarText(use.text)} }`)];
  }
  const phases = pairOf(root, 'phases')?.key;
  if (list !== undefined || phases === undefined) return undefined;
  const newline = newlineOf(text);
  const at = withRemarksAbove(text, document.spanOf(phases).start);
  return [insertAt(at, `before-you-start:${newline}  - ${use.key}: ${source}${newline}`)];
}

/** The notice as it is written; what is written over several lines is put on one. */
function sourceOf({ node, text }: NoticeUse): string | undefined {
  const written = node.item.text.slice(node.from, node.to);
  if (!written.includes('\n')) return written;
  return text.trim().includes('\n') ? undefined : scalarText(text.trim());
}
