import { type DesignationCursor, decimal, restSpan, take, takePart } from './designationCursor';
import { readSuffixes } from './designationSuffixes';
import type { DesignationReading, UnifiedDesignation } from './threadDesignation';
import { readUnifiedSize, type WrittenSize } from './unifiedSizeText';
import { seriesOf, type UnifiedSeries } from './unifiedThreads';

/** Tolerance class of ASME B1.1: 1, 2 or 3, A outside and B inside. */
const classPattern = /[123][AB](?![A-Za-z0-9])/iy;

/** The R of UNRC says that the root is rounded; the series is the same. */
const seriesPattern = /\s*-?\s*(UNEF|UNR?C|UNR?F|UNR?S|UNR?)(?![A-Za-z0-9])/iy;

/** Threads per inch: behind a hyphen, the trade's × or a blank. */
const countPattern = /\s*[-x×\s]\s*(\d+(?:\.\d+)?)(?![\d.,/A-Za-z])/iy;

type Series = UnifiedDesignation['series'];

interface Draft {
  readonly size: WrittenSize;
  readonly count: number | undefined;
  readonly series: Exclude<Series, 'none'> | undefined;
}

/** Reads `1/4-20 UNC-2A-LH` from its size on. */
export function readUnified(cursor: DesignationCursor): DesignationReading {
  const whole = restSpan(cursor);
  const size = readUnifiedSize(cursor);
  if (size === undefined) return fail(cursor, 'not-a-thread', whole);
  const count = takeCount(cursor);
  const series = takeSeries(cursor);
  const draft: Draft = { size, count, series };
  if (count === undefined && series === undefined) return withoutPitch(cursor, size, whole);
  const inferred = count ?? countOf(draft);
  const suffixes = readSuffixes(cursor, classPattern, false);
  if (inferred === undefined || inferred <= 0) return fail(cursor, 'pitch-unknown', whole);
  tellContradiction(cursor, draft);
  const { toleranceClass, hand } = suffixes;
  const designation = complete(draft, inferred, { toleranceClass: toleranceClass.toUpperCase(), hand }, cursor);
  return { designation, problems: cursor.problems };
}

function complete(
  { size, count, series }: Draft,
  threadsPerInch: number,
  suffixes: Pick<UnifiedDesignation, 'toleranceClass' | 'hand'>,
  cursor: DesignationCursor,
): UnifiedDesignation {
  const fromTables = size.known === undefined ? undefined : seriesOf(size.known, threadsPerInch);
  const seriesFrom = series !== undefined ? 'written' : fromTables !== undefined ? 'tables' : 'nowhere';
  return {
    system: 'unified',
    size: size.text,
    diameter: size.inches * 25.4,
    pitch: 25.4 / threadsPerInch,
    threadsPerInch,
    pitchFrom: count === undefined ? 'series' : 'written',
    series: series ?? fromTables ?? 'none',
    seriesFrom,
    ...suffixes,
    parts: cursor.parts,
  };
}

function takeCount(cursor: DesignationCursor): number | undefined {
  const match = take(cursor, countPattern)?.[1];
  if (match === undefined) return undefined;
  cursor.parts.push({ kind: 'pitch', span: { start: cursor.at - match.length, end: cursor.at } });
  return decimal(match);
}

function takeSeries(cursor: DesignationCursor): Draft['series'] {
  const match = takePart(cursor, 'series', seriesPattern)?.[1];
  if (match === undefined) return undefined;
  const span = { start: cursor.at - match.length, end: cursor.at };
  cursor.parts.splice(-1, 1, { kind: 'series', span });
  const name = match.toUpperCase().replace('UNR', 'UN');
  return (['UNC', 'UNF', 'UNEF', 'UNS', 'UN'] as const).find((one) => one === name);
}

function hasOneCount(series: Draft['series']): series is UnifiedSeries {
  return series === 'UNC' || series === 'UNF' || series === 'UNEF';
}

/** `1/4 UNF` names its pitch by the series. */
function countOf({ size, series }: Draft): number | undefined {
  return hasOneCount(series) ? size.known?.threadsPerInch[series] : undefined;
}

function tellContradiction(cursor: DesignationCursor, { size, count, series }: Draft): void {
  if (!hasOneCount(series) || count === undefined) return;
  const right = size.known?.threadsPerInch[series];
  const span = cursor.parts.find((part) => part.kind === 'series')?.span;
  if (right === undefined || right === count || span === undefined) return;
  cursor.problems.unshift({ kind: 'series-contradicts-pitch', series, threadsPerInch: right, span });
}

/** A fraction or `#10` alone is a thread half typed; a bare number could be anything. */
function withoutPitch(
  cursor: DesignationCursor,
  size: WrittenSize,
  whole: { readonly start: number; readonly end: number },
): DesignationReading {
  const started = /-\s*$/.test(cursor.text.slice(cursor.at)) && /^\s*-/.test(cursor.text.slice(cursor.at));
  if (started) return fail(cursor, 'pitch-missing', restSpan(cursor));
  if (cursor.text.slice(cursor.at).trim() !== '' || size.form === 'integer') return fail(cursor, 'not-a-thread', whole);
  return fail(cursor, 'pitch-missing', whole);
}

function fail(
  cursor: DesignationCursor,
  kind: 'not-a-thread' | 'pitch-missing' | 'pitch-unknown',
  span: { readonly start: number; readonly end: number },
): DesignationReading {
  return { problems: [{ kind, span }, ...cursor.problems] };
}
