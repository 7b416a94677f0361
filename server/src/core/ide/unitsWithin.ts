import { documentUnit } from '../analysis/documentUnit';
import type { Unit } from '../model/facts';
import type { Node } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { nodeSpan } from './nodeSpan';
import { touching } from './touching';

/** The units of which something may stand in a span, and no others: an editor asks for what it shows. */
export function* unitsWithin(document: SyntaxDocument, within: Span): Generator<Unit> {
  const unit = documentUnit(document);
  if (unit !== undefined) yield* below(document, unit, within);
}

function* below(document: SyntaxDocument, unit: Unit, within: Span): Generator<Unit> {
  if (!touches(document, unit.node, within)) return;
  yield unit;
  const children = touching(document, unit.children, ({ node }) => node, within);
  for (const child of children) yield* below(document, child, within);
}

/** Whether something of a node may stand in a span, or end or begin there. */
export function touches(document: SyntaxDocument, node: Node, { start, end }: Span): boolean {
  const span = nodeSpan(document, node);
  return span.start <= end && start <= span.end;
}
