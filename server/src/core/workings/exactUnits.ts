import type { QuantityValue } from '../model/values';
import { quantityRows } from './quantityWorking';
import type { Working } from './working';

/** Rows behind which the units of a value belong: what is stated of it. */
const stated: ReadonlySet<string> = new Set(['stated', 'accepted']);

/**
 * A working with the value that it is about in every unit of the trade, exactly and with the ends of its tolerance, in the
 * place of the rough row `in other units`.
 */
export function withExactUnits(working: Working, { reading: { quantity } }: QuantityValue): Working {
  if (quantity === undefined) return working;
  const rows = working.rows.filter(({ label }) => label !== 'in other units');
  const behind = rows.findIndex(({ label }) => stated.has(label)) + 1;
  return { ...working, rows: rows.toSpliced(behind, 0, ...quantityRows(quantity)) };
}
