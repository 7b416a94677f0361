import type { Span } from '../text/span';
import { cursorAt } from './designationCursor';
import { readMetric } from './readMetricDesignation';
import { readUnified } from './readUnifiedDesignation';
import type { ThreadSize } from './threadGeometry';
import type { UnifiedSeries } from './unifiedThreads';

/** Which way a thread runs; a designation without a mark is right-hand (ISO 965-1, ASME B1.1). */
export type DesignatedHand = 'right' | 'left';

/** A stretch of a designation and what it says. */
export interface DesignationPart {
  readonly kind: 'size' | 'pitch' | 'series' | 'class' | 'engagement' | 'hand';
  readonly span: Span;
}

interface Common extends ThreadSize {
  /** Tolerance class as written, `6g`, `5h6h`, `2A`; empty where none is. */
  readonly toleranceClass: string;
  readonly hand: DesignatedHand;
  /** What is written where, in the order of writing; a hand is among them only where one is written. */
  readonly parts: readonly DesignationPart[];
}

/** A metric thread, as ISO 965-1 designates it: `M10×1-6H-LH`. Diameter and pitch in mm. */
export interface MetricDesignation extends Common {
  readonly system: 'metric';
  /** Whether the pitch is written or is the coarse one that a designation without a pitch has. */
  readonly pitchFrom: 'written' | 'coarse-series';
  /** Length of engagement: short, normal, long; normal where nothing is written. */
  readonly engagement: 'S' | 'N' | 'L';
}

/** A unified thread, as ASME B1.1 designates it: `1/4-20 UNC-2A-LH`. Diameter and pitch in mm. */
export interface UnifiedDesignation extends Common {
  readonly system: 'unified';
  /** The size as it is to be written: `#10`, `1/4`, `1-1/8`, `.197`. */
  readonly size: string;
  readonly threadsPerInch: number;
  readonly pitchFrom: 'written' | 'series';
  /** Constant-pitch and special threads are `UN` and `UNS`; `none` where none is written and no series has this pitch. */
  readonly series: UnifiedSeries | 'UN' | 'UNS' | 'none';
  readonly seriesFrom: 'written' | 'tables' | 'nowhere';
}

export type ThreadDesignation = MetricDesignation | UnifiedDesignation;

/** Why a text is no designation, or not a whole one. `span` is what to underline, never empty where the text is not. */
export type DesignationProblem = { readonly span: Span } & (
  | { readonly kind: 'empty' }
  | { readonly kind: 'not-a-thread' }
  /** A thread of another kind: trapezoidal, pipe, Whitworth, rounded-root aerospace, several starts. */
  | { readonly kind: 'other-system'; readonly name: string }
  | { readonly kind: 'diameter-missing' }
  | { readonly kind: 'pitch-missing' }
  /** No pitch is written, and no table gives one for this diameter. */
  | { readonly kind: 'pitch-unknown' }
  /** A pitch that the diameter leaves no core for; most often a lost decimal point. */
  | { readonly kind: 'pitch-too-coarse'; readonly standard: readonly number[] }
  | { readonly kind: 'series-contradicts-pitch'; readonly series: UnifiedSeries; readonly threadsPerInch: number }
  | { readonly kind: 'class-unread'; readonly written: string }
  | { readonly kind: 'trailing-text'; readonly written: string }
);

/** What reading gives: the designation as far as it is certain, and what is wrong. */
export interface DesignationReading {
  readonly designation?: ThreadDesignation;
  readonly problems: readonly DesignationProblem[];
}

/**
 * Reads a thread designation: `M5`, `M5x0.8`, `M10×1-6H`, `M8×1 LH`, `1/4-20 UNC-2A`, `#10-32 UNF`, `.190-32`. Takes × or x,
 * hyphen or space, decimal point or comma, and LH after the size or at the end. Spans are offsets in `text`.
 */
export function readThreadDesignation(text: string): DesignationReading {
  const whole = { start: 0, end: text.length };
  if (text.trim() === '') return { problems: [{ kind: 'empty', span: whole }] };
  const other = otherSystem(text);
  if (other !== undefined) return { problems: [{ kind: 'other-system', span: whole, name: other }] };
  const cursor = cursorAt(text);
  if (/^\s*M/i.test(text)) return readMetric(cursor);
  if (/^\s*(?:#|No\b|\d|[.,]\d)/i.test(text)) return readUnified(cursor);
  return { problems: [{ kind: 'not-a-thread', span: whole }] };
}

const otherSystems: readonly (readonly [RegExp, string])[] = [
  [/^\s*Tr\s*\d/i, 'trapezoidal'],
  [/^\s*MJ\s*\d|\bUNJ[CFES]*\b/i, 'rounded-root aerospace'],
  [/^\s*M\s*\d+(?:[.,]\d+)?\s*[x×]\s*Ph/i, 'several starts'],
  [/^\s*(?:G|R[cps]?)\s*\d|\b(?:NPT[FRS]?|NPS[CFM]?|BSP[PT]?)\b/i, 'pipe'],
  [/\bBS[WF]\b/i, 'Whitworth'],
  [/^\s*S\s*\d|\bACME\b|\bBA\b/i, 'other'],
];

function otherSystem(text: string): string | undefined {
  return otherSystems.find(([pattern]) => pattern.test(text))?.[1];
}

/** The designation as the standards write it, the pitch always written out: `M5×0.8-6g`, `1/4-20 UNC-2A-LH`. */
export function formatDesignation(designation: ThreadDesignation): string {
  const hand = designation.hand === 'left' ? '-LH' : '';
  const tolerance = designation.toleranceClass === '' ? '' : `-${designation.toleranceClass}`;
  if (designation.system === 'metric') {
    const engagement = designation.engagement === 'N' ? '' : `-${designation.engagement}`;
    return `M${designation.diameter}×${designation.pitch}${tolerance}${engagement}${hand}`;
  }
  const series = designation.series === 'none' ? '' : ` ${designation.series}`;
  return `${designation.size}-${designation.threadsPerInch}${series}${tolerance}${hand}`;
}

/** In what two threads differ that are to be screwed together; empty where they fit. Tolerance classes may differ. */
export function threadDifferences(
  one: ThreadDesignation,
  other: ThreadDesignation,
): readonly ('diameter' | 'pitch' | 'hand')[] {
  const hand = one.hand === other.hand ? [] : (['hand'] as const);
  return [...sizeDifferences(one, other), ...hand];
}

function sizeDifferences(one: ThreadSize, other: ThreadSize): ('diameter' | 'pitch')[] {
  // A tenth of a micrometre tells apart any two threads of the tables, and nothing that differs by rounding alone.
  const differ = (key: 'diameter' | 'pitch') => Math.abs(one[key] - other[key]) > 1e-4;
  return (['diameter', 'pitch'] as const).filter(differ);
}
