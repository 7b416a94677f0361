import type { Severity } from '../analysis/settings';
import { el, type Html } from '../sheet/htmlText';
import type { ChartBeat } from './chart';
import { n } from './geometry';

/** What is drawn upon a bar where a beat measures, marks or aligns; nothing for every other. */
export function glyphsOf({ deed }: ChartBeat, x: number, middle: number): Html[] {
  if (deed === undefined) return [];
  const examined = deed.examines ? [ring(x, middle)] : [];
  if (deed.mark === 'made') return [...examined, notch(x, middle)];
  return deed.mark === 'aligned' ? [...examined, notch(x, middle), notch(x, middle, -1)] : examined;
}

/** Looked at, measured or checked. */
export function ring(x: number, y: number): Html {
  return el('circle', { class: 'examined', cx: n(x), cy: n(y), r: 4 });
}

/** A mark of the position; two that meet where the marks are brought together. */
export function notch(x: number, middle: number, side = 1): Html {
  return el('path', { class: 'mark', d: `M${n(x - 3.5)} ${n(middle - 9 * side)}h7l-3.5 ${6 * side}z` });
}

/** A finding by its weight: each has an outline of its own. */
export function findingSign(severity: Severity, x: number, y: number): Html {
  const shape = {
    error: `M${n(x - 2.5)} ${n(y - 6)}h5l3.5 3.5v5l-3.5 3.5h-5l-3.5 -3.5v-5z`,
    warning: `M${n(x)} ${n(y - 6.5)}l6.5 12h-13z`,
    info: `M${n(x - 5)} ${n(y - 5)}h10v10h-10z`,
  }[severity];
  const stroke =
    severity === 'info'
      ? `M${n(x)} ${n(y - 1)}v4M${n(x)} ${n(y - 3)}v.1`
      : `M${n(x)} ${n(y - 2.5)}v4M${n(x)} ${n(y + 3.5)}v.1`;
  return el(
    'g',
    { class: `sign ${severity}` },
    el('path', { class: 'sign-plate', d: shape }),
    el('path', { class: 'sign-stroke', d: stroke }),
  );
}

const WEIGHT: Readonly<Record<Severity, number>> = { error: 2, warning: 1, info: 0 };

export function worstOf(severities: readonly Severity[]): Severity {
  return severities.reduce((worst, one) => (WEIGHT[one] > WEIGHT[worst] ? one : worst), 'info');
}
