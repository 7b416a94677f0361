import { coarsePitch, metricPitches, metricSeries } from '../../standards/metricThreads';
import type { DesignationProblem, ThreadDesignation } from '../../standards/threadDesignation';
import type { ThreadSize } from '../../standards/threadGeometry';
import { seriesOf, type UnifiedSeries, unifiedSize, unifiedSizeOf } from '../../standards/unifiedThreads';
import type { Span } from '../../text/span';
import { listed } from './phrases';

/** A stretch of a designation, what to write there, and what the whole is then called. */
export interface ThreadChange {
  readonly span: Span;
  readonly text: string;
  readonly title: string;
}

/** A pitch that the series of the diameter do not have; the nearest ones in mm. */
export interface OddPitch {
  readonly kind: 'odd';
  readonly span: Span;
  readonly nearest: readonly number[];
}

/** More than these would be a table and no fix. */
const MOST_OFFERED = 3;

/** The size of a designation as it is written: `M5`, `1/4`. */
export function sizeText(designation: ThreadDesignation): string {
  return designation.system === 'metric' ? `M${designation.diameter}` : designation.size;
}

/** "pitches of 0.8 and 0.5 mm", "20 (UNC), 28 (UNF) and 32 (UNEF) threads per inch". */
export function standardPitches(designation: ThreadDesignation, pitches: readonly number[]): string {
  if (designation.system === 'metric') {
    const one = pitches.length === 1 ? 'a pitch' : 'pitches';
    return `${one} of ${listed(pitches.map(String))} mm (ISO 261)`;
  }
  return `${listed(pitches.map((pitch) => countWords(designation.size, pitch)))} threads per inch (ASME B1.1)`;
}

function countWords(size: string, pitch: number): string {
  const count = countOf(pitch);
  const known = unifiedSize(size);
  const series = known && seriesOf(known, count);
  return series === undefined ? String(count) : `${count} (${series})`;
}

function countOf(pitch: number): number {
  return Math.round(254 / pitch) / 10;
}

/** The diameters of the tables next to one, in words: "M5 and M6". */
export function nearestDiameters(designation: ThreadDesignation, nearest: readonly number[]): string {
  return listed(nearest.map((diameter) => sizeOf(designation.system, diameter)));
}

function sizeOf(system: ThreadSize['system'], diameter: number): string {
  return system === 'metric' ? `M${diameter}` : (unifiedSizeOf(diameter / 25.4)?.size ?? `${diameter / 25.4}`);
}

/** What may have been meant by a pitch that is missing, too coarse, not standard or not that of its series. */
export function pitchChoices(
  written: string,
  problem: DesignationProblem | OddPitch,
  designation: ThreadDesignation | undefined,
): ThreadChange[] {
  const span = problem.span;
  switch (problem.kind) {
    case 'odd':
      return designation === undefined ? [] : oddChoices(designation, problem);
    case 'pitch-too-coarse':
      return problem.standard.slice(0, MOST_OFFERED).map((pitch) => changed(written, span, String(pitch)));
    case 'pitch-missing':
      return missingChoices(written);
    case 'series-contradicts-pitch':
      return contradictionChoices(written, problem, designation);
    default:
      return [];
  }
}

function oddChoices(designation: ThreadDesignation, { span, nearest }: OddPitch): ThreadChange[] {
  return nearest.slice(0, MOST_OFFERED).map((pitch) => {
    const text = designation.system === 'metric' ? String(pitch) : String(countOf(pitch));
    const join = designation.system === 'metric' ? '×' : '-';
    return { span, text, title: `${sizeText(designation)}${join}${text}` };
  });
}

function changed(written: string, span: Span, text: string): ThreadChange {
  return { span, text, title: `${written.slice(0, span.start)}${text}${written.slice(span.end)}`.trim() };
}

/** A designation that stops behind its diameter gets the standard pitches, the coarse one first. */
function missingChoices(written: string): ThreadChange[] {
  const whole = { start: 0, end: written.length };
  const diameter = /^\s*M\s*(\d+(?:[.,]\d+)?)\s*[x×*]\s*0?[.,]?\s*$/i.exec(written)?.[1];
  if (diameter !== undefined) {
    const size = Number(diameter.replace(',', '.'));
    const texts = metricPitches(size).map((pitch) => `M${size}×${pitch}`);
    return texts.slice(0, MOST_OFFERED).map((text) => ({ span: whole, text, title: text }));
  }
  const size = unifiedSize(written.replace(/-\s*$/, '').trim());
  if (size === undefined) return [];
  return Object.entries(size.threadsPerInch).flatMap(([series, count]) => {
    const text = `${size.size}-${count} ${series}`;
    return count === undefined ? [] : [{ span: whole, text, title: text }];
  });
}

function contradictionChoices(
  written: string,
  { span, series, threadsPerInch }: DesignationProblem & { readonly kind: 'series-contradicts-pitch' },
  designation: ThreadDesignation | undefined,
): ThreadChange[] {
  if (designation?.system !== 'unified') return [];
  const known = unifiedSize(designation.size);
  const right: UnifiedSeries | undefined = known && seriesOf(known, designation.threadsPerInch);
  const count = designation.parts.find(({ kind }) => kind === 'pitch')?.span;
  const asSeries = right === undefined || right === series ? [] : [changed(written, span, right)];
  return count === undefined ? asSeries : [...asSeries, changed(written, count, String(threadsPerInch))];
}

/**
 * The diameters next to an odd one, with the written pitch where that is standard there, else with the coarse one. First the
 * diameter to which the pitch belongs as the coarse one: the pitch of a designation is seldom the slip.
 */
export function diameterChoices(designation: ThreadDesignation, nearest: readonly number[]): ThreadChange[] {
  const size = designation.parts.find(({ kind }) => kind === 'size')?.span;
  const pitch = designation.parts.find(({ kind }) => kind === 'pitch')?.span;
  if (size === undefined || designation.system !== 'metric') return [];
  const span = { start: size.start, end: pitch?.end ?? size.end };
  const diameters = new Set([...withCoarsePitch(designation), ...nearest]);
  return [...diameters].flatMap((diameter) => {
    const kept = metricPitches(diameter).includes(designation.pitch) ? designation.pitch : coarsePitch(diameter);
    const text = `M${diameter}×${kept}`;
    return kept === undefined ? [] : [{ span, text, title: text }];
  });
}

/** A size further away than this is no slip of one digit behind the point. */
const slipOfSize = 1.25;

function withCoarsePitch({ diameter, pitch }: ThreadSize): number[] {
  return metricSeries.flatMap((one) => {
    const ratio = one.diameter / diameter;
    return one.coarse === pitch && ratio < slipOfSize && ratio > 1 / slipOfSize ? [one.diameter] : [];
  });
}
