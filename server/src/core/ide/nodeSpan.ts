import type { Node } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { DocumentText } from '../text/documentText';
import type { Span } from '../text/span';

/** All that a node covers. One that is put together from several items knows only its first line, so its last part is asked. */
export function nodeSpan(document: SyntaxDocument, node: Node): Span {
  const { start, end } = document.spanOf(node);
  const last = lastPart(node);
  const whole = { start, end: last === undefined ? end : Math.max(end, nodeSpan(document, last).end) };
  return withoutLineEnd(document.content, whole);
}

function lastPart(node: Node): Node | undefined {
  if (node.kind === 'scalar') return undefined;
  if (node.kind === 'list') return node.items.at(-1);
  const pair = node.pairs.at(-1);
  return pair?.value ?? pair?.key;
}

/** A text in lines of its own takes its last line end along, which is nothing to show. */
function withoutLineEnd(text: DocumentText, { start, end }: Span): Span {
  let last = end;
  while (last > start && /\s/.test(String.fromCharCode(text.charCodeAt(last - 1)))) last--;
  return { start, end: last };
}
