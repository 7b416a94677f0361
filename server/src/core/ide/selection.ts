import type { Node, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { idUseAt } from './idUses';
import { nodeSpan } from './nodeSpan';

/** What a selection at an offset grows to, step by step: the word, the id, the value, its key with it, and so on up. */
export function selectionsAt(document: SyntaxDocument, offset: number): Span[] {
  const all: Span[] = [{ start: 0, end: document.text.length }];
  if (document.root !== undefined) addSpans(document, document.root, offset, all);
  const use = idUseAt(document, offset);
  const id = use === undefined ? undefined : document.spanOf(use.range);
  const word = wordAt(document.text, offset);
  for (const span of [id, word]) if (span !== undefined) all.push(span);
  return growing(all.reverse());
}

function addSpans(document: SyntaxDocument, node: Node, offset: number, into: Span[]): void {
  const span = nodeSpan(document, node);
  if (!holds(span, offset)) return;
  into.push(span);
  if (node.kind === 'scalar') addText(document, node, offset, into);
  if (node.kind === 'list') for (const item of node.items) addSpans(document, item, offset, into);
  if (node.kind !== 'map') return;
  for (const { key, value } of node.pairs) {
    const end = value === undefined ? document.spanOf(key).end : nodeSpan(document, value).end;
    const pair = { start: document.spanOf(key).start, end };
    if (!holds(pair, offset)) continue;
    into.push(pair);
    addSpans(document, key, offset, into);
    if (value !== undefined) addSpans(document, value, offset, into);
  }
}

/** A text in quotes can be taken without them. */
function addText(document: SyntaxDocument, scalar: ScalarNode, offset: number, into: Span[]): void {
  if (scalar.style !== 'single' && scalar.style !== 'double') return;
  const { start, end } = document.spanOf(scalar);
  const inner = { start: start + 1, end: end - 1 };
  if (inner.start <= inner.end && holds(inner, offset)) into.push(inner);
}

function wordAt(text: string, offset: number): Span | undefined {
  const isPart = (at: number) => /[\p{L}\p{N}\p{M}]/u.test(text.charAt(at));
  let [start, end] = [offset, offset];
  while (start > 0 && isPart(start - 1)) start--;
  while (isPart(end)) end++;
  return end > start ? { start, end } : undefined;
}

function holds(span: Span, offset: number): boolean {
  return span.start <= offset && offset <= span.end;
}

/** Only those that hold the one before and more: of two values that touch at the offset, one is grown from. */
function growing(spans: readonly Span[]): Span[] {
  const kept: Span[] = [];
  for (const span of spans) {
    const last = kept.at(-1);
    const isLarger =
      last === undefined ||
      (span.start <= last.start && last.end <= span.end && span.end - span.start > last.end - last.start);
    if (isLarger) kept.push(span);
  }
  return kept;
}
