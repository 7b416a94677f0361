import { el, escapeHtml, type Html } from '../sheet/htmlText';
import type { Chart, ChartRow } from './chart';
import { NAMES, n, ROW } from './geometry';
import { shortened } from './shortened';

const INDENT = 11;
const LEFT = 8;

/** The names of the parts, each set in under what carries it. */
export function namesOf({ rows }: Chart): Html[] {
  return rows.map((row, index) => {
    const x = LEFT + row.depth * INDENT;
    return el(
      'g',
      { class: row.isTemporary ? 'name temporary' : 'name', transform: `translate(0 ${index * ROW})` },
      el('title', {}, escapeHtml(row.name)),
      el('path', { class: 'guide', d: `M0 ${ROW}H${NAMES}` }),
      ...(row.depth === 0 ? [] : [elbow(row, rows, index, x)]),
      el('text', { x: n(x), y: 14 }, escapeHtml(shortened(row.name, NAMES - x - 6, 12))),
    );
  });
}

/** From a part up to the part before it that hangs on the same one, or to what carries both. */
function elbow({ depth }: ChartRow, rows: readonly ChartRow[], index: number, x: number): Html {
  const above = rows.slice(0, index).findLastIndex((row) => row.depth <= depth);
  const reach = (index - above) * ROW - (rows[above]?.depth === depth ? 0 : 6);
  return el('path', { class: 'elbow', d: `M${n(x - 3)} ${ROW / 2}h-4v${-reach}` });
}
