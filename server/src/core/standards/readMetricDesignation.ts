import { type DesignationCursor, decimal, restSpan, take, takePart } from './designationCursor';
import { readSuffixes } from './designationSuffixes';
import { coarsePitch, metricPitches } from './metricThreads';
import type { DesignationReading, MetricDesignation } from './threadDesignation';

/** Tolerance class of ISO 965-1: grade and position, once or for pitch and crest, or nut and bolt apart: `6H`, `5g6g`, `6H/6g`. */
const classPattern = /(?:\d{1,2}[a-hE-H]){1,2}(?:\s*\/\s*(?:\d{1,2}[a-hE-H]){1,2})?(?![A-Za-z0-9])/y;

const sizePattern = /\s*M\s*(\d+(?:[.,]\d+)?|[.,]\d+)/iy;
const pitchPattern = /\s*[x×*]\s*(\d+(?:[.,]\d+)?|[.,]\d+)(?![A-Za-z])/iy;

/** The trade also writes the pitch behind a hyphen, `M10-1.5`; a grade of tolerance stands there too, but with its letter. */
const hyphenPitchPattern = /\s*-\s*(\d+(?:[.,]\d+)?|[.,]\d+)(?![\d.,A-Za-z/])/y;

/** Above a third of the diameter no pitch was ever standard; from about four fifths there is no core left. */
const coarsestShare = 1 / 3;

/** Reads `M8×1-6g-LH` from its M on. */
export function readMetric(cursor: DesignationCursor): DesignationReading {
  const size = takePart(cursor, 'size', sizePattern);
  if (size === undefined) return withoutDiameter(cursor);
  const diameter = decimal(size[1] ?? '');
  if (!(diameter > 0)) return fail(cursor, { kind: 'diameter-missing', span: restSpan({ ...cursor, at: 0 }) });
  const written = readPitch(cursor, diameter);
  if (written === 'missing') return fail(cursor, { kind: 'pitch-missing', span: restSpan(cursor) });
  const pitch = written ?? coarsePitch(diameter);
  const suffixes = readSuffixes(cursor, classPattern, true);
  if (pitch === undefined) return fail(cursor, { kind: 'pitch-unknown', span: sizeSpan(cursor) });
  if (!(pitch > 0 && pitch <= diameter * coarsestShare)) return tooCoarse(cursor, diameter);
  const pitchFrom = written === undefined ? 'coarse-series' : 'written';
  const designation: MetricDesignation = {
    system: 'metric',
    diameter,
    pitch,
    pitchFrom,
    ...suffixes,
    parts: cursor.parts,
  };
  return { designation, problems: cursor.problems };
}

function readPitch(cursor: DesignationCursor, diameter: number): number | 'missing' | undefined {
  const match = takePart(cursor, 'pitch', pitchPattern);
  if (match !== undefined) {
    trimPitchPart(cursor, match[1] ?? '');
    // A lone nought is the beginning of 0.8.
    return decimal(match[1] ?? '') === 0 ? 'missing' : decimal(match[1] ?? '');
  }
  if (take(cursor, /\s*[x×*]/iy) !== undefined) return 'missing';
  const before = cursor.at;
  const hyphened = take(cursor, hyphenPitchPattern)?.[1];
  if (hyphened === undefined) return undefined;
  if (decimal(hyphened) <= diameter * coarsestShare) {
    cursor.parts.push({ kind: 'pitch', span: { start: cursor.at - hyphened.length, end: cursor.at } });
    return decimal(hyphened);
  }
  // A bare number too large for a pitch is the start of a tolerance class.
  cursor.at = before;
  return undefined;
}

/** The part of a pitch is its number alone, without the × before it. */
function trimPitchPart(cursor: DesignationCursor, number: string): void {
  cursor.parts.pop();
  cursor.parts.push({ kind: 'pitch', span: { start: cursor.at - number.length, end: cursor.at } });
}

function withoutDiameter(cursor: DesignationCursor): DesignationReading {
  const span = restSpan(cursor);
  // A lone M, or M and a sign, is a designation being typed; a word that starts with m is not.
  const isWord = /^\s*M\s*[A-Za-z]/i.test(cursor.text) && !/^\s*M\s*x\b/i.test(cursor.text);
  return fail(cursor, { kind: isWord ? 'not-a-thread' : 'diameter-missing', span });
}

function tooCoarse(cursor: DesignationCursor, diameter: number): DesignationReading {
  const span = cursor.parts.find((part) => part.kind === 'pitch')?.span ?? sizeSpan(cursor);
  return fail(cursor, { kind: 'pitch-too-coarse', span, standard: metricPitches(diameter) });
}

function sizeSpan(cursor: DesignationCursor) {
  return cursor.parts.find((part) => part.kind === 'size')?.span ?? restSpan(cursor);
}

function fail(cursor: DesignationCursor, problem: DesignationReading['problems'][number]): DesignationReading {
  return { problems: [problem, ...cursor.problems] };
}
