import type { ThreadSize } from './threadGeometry';

/** The standard pitches of one metric diameter, in mm; a diameter of the third choice may have no coarse pitch. */
export interface MetricSeries {
  readonly diameter: number;
  readonly coarse: number | undefined;
  /** The coarsest first. */
  readonly fine: readonly number[];
}

type Row = readonly [diameter: number, coarse: number | undefined, fine: readonly number[]];

/**
 * Diameter, coarse pitch and fine pitches of ISO 261, M1.6 to M30, in mm. The coarse pitches and the fine ones for general
 * use (M8×1, M10×1.25, M10×1, M12×1.5, M12×1.25, M14×1.5, M16×1.5, M18 to M22 ×2 and ×1.5, M24 to M30 ×2) are those of
 * ISO 262; the others are from memory of ISO 261, with published thread charts as a second witness.
 */
const rows: readonly Row[] = [
  [1.6, 0.35, [0.2]],
  [1.8, 0.35, [0.2]],
  [2, 0.4, [0.25]],
  [2.2, 0.45, [0.25]],
  [2.5, 0.45, [0.35]],
  [3, 0.5, [0.35]],
  [3.5, 0.6, [0.35]],
  [4, 0.7, [0.5]],
  [4.5, 0.75, [0.5]],
  [5, 0.8, [0.5]],
  [5.5, undefined, [0.5]],
  [6, 1, [0.75]],
  [7, 1, [0.75]],
  [8, 1.25, [1, 0.75]],
  [9, 1.25, [1, 0.75]],
  [10, 1.5, [1.25, 1, 0.75]],
  [11, 1.5, [1, 0.75]],
  [12, 1.75, [1.5, 1.25, 1]],
  [14, 2, [1.5, 1.25, 1]],
  [15, undefined, [1.5, 1]],
  [16, 2, [1.5, 1]],
  [17, undefined, [1.5, 1]],
  [18, 2.5, [2, 1.5, 1]],
  [20, 2.5, [2, 1.5, 1]],
  [22, 2.5, [2, 1.5, 1]],
  [24, 3, [2, 1.5, 1]],
  [25, undefined, [2, 1.5, 1]],
  [26, undefined, [1.5]],
  [27, 3, [2, 1.5, 1]],
  [28, undefined, [2, 1.5, 1]],
  [30, 3.5, [3, 2, 1.5, 1]],
];

/** Every diameter of the table with its pitches, the smallest first. */
export const metricSeries: readonly MetricSeries[] = rows.map(([diameter, coarse, fine]) => ({
  diameter,
  coarse,
  fine,
}));

const byDiameter = new Map(metricSeries.map((series) => [series.diameter, series]));

/** The standard pitches of a metric diameter in mm; undefined where the table has no such diameter. */
export function metricSeriesOf(diameter: number): MetricSeries | undefined {
  return byDiameter.get(diameter);
}

/** The pitch that a designation without one has, in mm (ISO 965-1): the coarse one. */
export function coarsePitch(diameter: number): number | undefined {
  return byDiameter.get(diameter)?.coarse;
}

/** Every standard pitch of a metric diameter, the coarsest first; empty where the table has no such diameter. */
export function metricPitches(diameter: number): readonly number[] {
  const series = byDiameter.get(diameter);
  if (series === undefined) return [];
  return series.coarse === undefined ? series.fine : [series.coarse, ...series.fine];
}

/** A metric thread of the table by its diameter and pitch in mm; without a pitch, the coarse one. */
export function metricThread(diameter: number, pitch = coarsePitch(diameter)): ThreadSize | undefined {
  if (pitch === undefined || !metricPitches(diameter).includes(pitch)) return undefined;
  return { system: 'metric', diameter, pitch };
}
