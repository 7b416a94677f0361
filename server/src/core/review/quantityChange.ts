import type { QuantityValue } from '../model/values';
import { boundsOf, compareQuantities, liesWithin, type Quantity } from '../quantity';

/** What a second quantity is to a first one. */
export type QuantityChange =
  | { readonly is: 'same' }
  /** The same value, written with another unit or another number of places. */
  | { readonly is: 'rewritten'; readonly note: string }
  | { readonly is: 'other'; readonly note: string | undefined; readonly direction: 'wider' | 'narrower' | 'other' };

/** Compares quantities as quantities: `5.1 N·m` and `45.1 lbf·in` are one value; `51 N·m` is ten times as much. */
export function quantityChange(before: QuantityValue, after: QuantityValue): QuantityChange {
  const [a, b] = [before.reading.quantity, after.reading.quantity];
  if (before.word !== undefined || after.word !== undefined || a === undefined || b === undefined)
    return before.text.trim() === after.text.trim()
      ? { is: 'same' }
      : { is: 'other', note: undefined, direction: 'other' };
  const comparison = a.dimension === b.dimension ? compareQuantities(a, b) : 'different';
  if (comparison === 'same') return a.unit === b.unit ? sameUnit(a, b) : rewritten('the same value in another unit');
  if (comparison === 'first-says-more') return other('the tolerance is gone', 'wider');
  if (comparison === 'second-says-more') return other('a tolerance is there now', 'narrower');
  return a.dimension === b.dimension ? compared(a, b) : other('another dimension', 'other');
}

function sameUnit(a: Quantity, b: Quantity): QuantityChange {
  return (a.dual === null) === (b.dual === null) ? { is: 'same' } : rewritten('the same value, second unit apart');
}

const rewritten = (note: string): QuantityChange => ({ is: 'rewritten', note });
const other = (note: string | undefined, direction: 'wider' | 'narrower' | 'other'): QuantityChange => ({
  is: 'other',
  note,
  direction,
});

function compared(a: Quantity, b: Quantity): QuantityChange {
  if (liesWithin(a, b)) return other(notesOf('wider', a, b), 'wider');
  if (liesWithin(b, a)) return other(notesOf('narrower', a, b), 'narrower');
  return other(notesOf(undefined, a, b), 'other');
}

function notesOf(first: string | undefined, a: Quantity, b: Quantity): string | undefined {
  const times = ratioWords(boundsOf(a).nominal, boundsOf(b).nominal);
  const slip = isUnitSlip(a, b) ? 'the number is the same and the unit is not' : undefined;
  return [first, times, slip].filter((one) => one !== undefined).join('; ') || undefined;
}

function isUnitSlip(a: Quantity, b: Quantity): boolean {
  return 'number' in a && 'number' in b && a.number.value === b.number.value && a.unit !== b.unit;
}

/** `ten times`, `a tenth`, `2.5 times`; nothing for a change of less than half, which a person judges by the numbers. */
function ratioWords(from: number, to: number): string | undefined {
  if (from === 0 || to === 0 || from > 0 !== to > 0) return undefined;
  const ratio = to / from;
  if (ratio > 1 / 1.5 && ratio < 1.5) return undefined;
  const power = Math.log10(ratio);
  const near = Math.round(power);
  if (Math.abs(power - near) < 1e-6) return POWERS.get(near) ?? `10^${near} times`;
  return ratio > 1 ? `${shown(ratio)} times` : `1/${shown(1 / ratio)} of it`;
}

const POWERS = new Map([
  [1, 'ten times'],
  [2, 'a hundred times'],
  [3, 'a thousand times'],
  [-1, 'a tenth'],
  [-2, 'a hundredth'],
  [-3, 'a thousandth'],
]);

function shown(ratio: number): string {
  return String(Number(ratio.toPrecision(ratio >= 100 ? 3 : 2)));
}
