import type { QuantityValue } from '../../model/values';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';

/** Where a stretch of a quantity's text stands in the document. */
export function quantityRange(value: QuantityValue, span: Span): ItemRange {
  return sourceRange(value.node, value.offset + span.start, value.offset + span.end);
}

/** What a problem of a value is about, as it is written; the whole value where the problem spans nothing. */
export function writtenAt({ text }: QuantityValue, { start, end }: Span): string {
  return text.slice(start, end).trim() || text.trim();
}
