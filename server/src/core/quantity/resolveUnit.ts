import { distance } from 'fastest-levenshtein';
import type { Dimension } from './dimension';
import type { QuantityProblem } from './quantity';
import type { WrittenUnit } from './scanner';
import { isStandardSpelling, keysOfDimension, type Spelling } from './spellings';
import type { Unit } from './unit';
import { usualUnits } from './units';

/** A written unit read for one dimension: the unit, where it is certain, and what is wrong with how it is written. */
export interface ResolvedUnit {
  readonly unit: Unit | null;
  readonly problems: readonly QuantityProblem[];
}

/** Reads a written unit as one of `dimension`. */
export function resolveUnit(written: WrittenUnit, dimension: Dimension): ResolvedUnit {
  const { text, span, meanings } = written;
  const meaning = meanings.find((each) => each.dimension === dimension);
  if (meaning === undefined) return { unit: null, problems: [strangeUnit(written, dimension)] };
  if (meaning.status !== 'ambiguous') return { unit: meaning.unit, problems: spellingProblems(written, meaning) };
  const { candidates } = meaning;
  const certain =
    candidates.length === 1 && (dimension === 'length' || dimension === 'angle') ? candidates[0] : undefined;
  const replacement = certain === undefined ? {} : { replacement: gapToAdd(written, certain) + certain.symbol };
  return { unit: null, problems: [{ kind: 'unit-ambiguous', span, written: text, candidates, ...replacement }] };
}

function strangeUnit(written: WrittenUnit, expected: Dimension): QuantityProblem {
  const { text, span, meanings } = written;
  const found = (meanings.find((each) => each.status === 'standard') ?? meanings[0])?.dimension;
  if (found === undefined) return { kind: 'unit-unknown', span, written: text, nearest: nearestUnits(text, expected) };
  return { kind: 'wrong-dimension', span, written: text, found, expected, candidates: usualUnits(expected) };
}

function spellingProblems(
  written: WrittenUnit,
  meaning: Exclude<Spelling, { status: 'ambiguous' }>,
): QuantityProblem[] {
  const { text, span } = written;
  const { unit } = meaning;
  const standard = meaning.status !== 'doubtful' && isStandardSpelling(text, unit);
  const symbol = standard ? text : unit.symbol;
  const gap = gapToAdd(written, unit);
  if (standard && gap === '' && !hasWrongGap(written, unit)) return [];
  const doubtful = meaning.status === 'doubtful';
  const reason = standard ? 'space' : 'symbol';
  const start = hasWrongGap(written, unit) ? span.start - written.spaces : span.start;
  const wanted = hasWrongGap(written, unit) && unit.gap === 'space' ? ' ' : gap;
  return [
    {
      kind: 'unit-spelling',
      span: { start, end: span.end },
      written: text,
      unit,
      reason,
      doubtful,
      replacement: wanted + symbol,
    },
  ];
}

/** The space that a symbol still needs before it. */
function gapToAdd(written: WrittenUnit, unit: Unit): string {
  return unit.gap === 'space' && written.spaces === 0 ? ' ' : '';
}

/** Too much space before the symbol; a degree sign takes none, every other symbol one. */
function hasWrongGap(written: WrittenUnit, unit: Unit): boolean {
  return written.spaces > (unit.gap === 'space' ? 1 : 0);
}

const mostNearest = 3;

/** Units whose spelling is at most a third of its letters away, nearest first. */
function nearestUnits(text: string, dimension: Dimension): readonly Unit[] {
  const written = text.toLowerCase();
  const found = new Map<Unit, number>();
  for (const [key, unit] of keysOfDimension(dimension)) {
    const apart = distance(written, key.toLowerCase());
    const near = apart <= Math.max(1, Math.floor(Math.max(key.length, written.length) / 3));
    if (near && apart < key.length && apart < (found.get(unit) ?? Number.POSITIVE_INFINITY)) found.set(unit, apart);
  }
  return [...found]
    .sort((a, b) => a[1] - b[1])
    .slice(0, mostNearest)
    .map(([unit]) => unit);
}
