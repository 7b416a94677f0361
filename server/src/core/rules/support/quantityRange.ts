import type { QuantityValue } from '../../model/values';
import type { ItemRange } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';

/** Where a stretch of a quantity's text stands in the document. */
export function quantityRange(value: QuantityValue, span: Span): ItemRange {
  return sourceRange(value.node, value.offset + span.start, value.offset + span.end);
}
