import { metricPitches, metricSeries, metricSeriesOf } from './metricThreads';
import type { ThreadSize } from './threadGeometry';
import { seriesOf, type UnifiedSeries, unifiedSizeOf, unifiedSizes } from './unifiedThreads';

/** Whether a thread is one that taps, dies and fasteners are made for. Lengths in mm. */
export type PitchJudgement =
  | { readonly kind: 'standard'; readonly series: 'coarse' | 'fine' | UnifiedSeries }
  /** The diameter is in the table, the pitch is not; `nearest` holds the standard pitches, the likeliest first. */
  | { readonly kind: 'pitch-not-standard'; readonly nearest: readonly number[] }
  /** The tables have no such diameter, though they go that far; `nearest` holds the diameters next to it, the nearest first. */
  | { readonly kind: 'diameter-not-standard'; readonly nearest: readonly number[] }
  /** Beyond the tables: nothing can be said. */
  | { readonly kind: 'out-of-range' };

/** Whether the pitch is standard for the diameter (ISO 261, ASME B1.1), and which ones are. */
export function judgePitch(thread: ThreadSize): PitchJudgement {
  return thread.system === 'metric' ? judgeMetric(thread) : judgeUnified(thread);
}

function judgeMetric({ diameter, pitch }: ThreadSize): PitchJudgement {
  const series = metricSeriesOf(diameter);
  if (series === undefined) {
    const diameters = metricSeries.map((one) => one.diameter);
    return strangeDiameter(diameters, diameter);
  }
  if (series.coarse === pitch) return { kind: 'standard', series: 'coarse' };
  if (series.fine.includes(pitch)) return { kind: 'standard', series: 'fine' };
  return { kind: 'pitch-not-standard', nearest: nearestFirst(metricPitches(diameter), pitch) };
}

function judgeUnified({ diameter, pitch }: ThreadSize): PitchJudgement {
  const inches = diameter / 25.4;
  const count = 25.4 / pitch;
  const size = unifiedSizeOf(inches);
  if (size === undefined) {
    const diameters = unifiedSizes.map((one) => one.inches * 25.4);
    return strangeDiameter(diameters, diameter);
  }
  // A pitch in mm is a repeating decimal for most counts, hence the rounding; no standard count has more than one decimal.
  const series = seriesOf(size, Math.round(count * 10) / 10);
  if (series !== undefined) return { kind: 'standard', series };
  const counts = Object.values(size.threadsPerInch).flatMap((one) => one ?? []);
  return { kind: 'pitch-not-standard', nearest: nearestFirst(counts, count).map((one) => 25.4 / one) };
}

function strangeDiameter(diameters: readonly number[], diameter: number): PitchJudgement {
  if (diameter < Math.min(...diameters) || diameter > Math.max(...diameters)) return { kind: 'out-of-range' };
  return { kind: 'diameter-not-standard', nearest: nearestFirst(diameters, diameter).slice(0, 2) };
}

/** By ratio, since a slip in a number is as likely a factor as a difference. */
function nearestFirst(values: readonly number[], wanted: number): readonly number[] {
  return [...values].sort((a, b) => Math.abs(Math.log(a / wanted)) - Math.abs(Math.log(b / wanted)));
}
