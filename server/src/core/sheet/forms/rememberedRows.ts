import type { Labels } from '../labels';
import type { FormCell } from './form';

/**
 * The rows of a table, each remembered with the line of the sheet that it is made of: a line that nothing has changed is
 * the object of the last sheet, and gives the same cells again.
 */
export function rememberedRows<Line extends object>(cellsOf: (line: Line, labels: Labels) => FormCell[]) {
  const known = new WeakMap<Labels, WeakMap<Line, FormCell[]>>();
  return (lines: readonly Line[], labels: Labels): FormCell[][] => {
    const byLine = known.get(labels) ?? new WeakMap<Line, FormCell[]>();
    known.set(labels, byLine);
    return lines.map((line) => {
      const cells = byLine.get(line) ?? cellsOf(line, labels);
      byLine.set(line, cells);
      return cells;
    });
  };
}
