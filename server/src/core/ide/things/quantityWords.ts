import type { QuantityValue } from '../../model/values';
import { formatQuantity } from '../../quantity';
import { isUnitRow, quantityRows } from '../../workings/quantityWorking';
import { oneLine } from './card';

/** A quantity as it is printed; as it is written where it cannot be read. */
export function quantityText(value: QuantityValue | undefined): string {
  if (value === undefined) return '';
  const { quantity } = value.reading;
  return quantity === undefined ? oneLine(value.text) : formatQuantity(quantity, { ranges: 'words' });
}

/** The same with what it is in the other units of the trade. */
export function quantityInUnits(value: QuantityValue): string {
  const { quantity } = value.reading;
  if (quantity === undefined) return quantityText(value);
  const others = quantityRows(quantity).filter(isUnitRow);
  if (others.length === 0) return quantityText(value);
  // The ends that a tolerance leaves are told by the calculation.
  return `${quantityText(value)} (${others.map(({ text }) => text.replace(/ \([^()]*\)$/, '')).join('; ')})`;
}
