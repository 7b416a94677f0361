import type { ChangeSide } from '../review/change';
import { nameIn, type Version } from '../review/version';
import { LineIndex } from '../text/lineIndex';
import type { Reviewed } from './reviewed';

const indexes = new WeakMap<Version, Map<string, LineIndex>>();

/** The lines of a document of a version. */
export function linesIn(version: Version, uri: string): LineIndex {
  const known = indexes.get(version) ?? new Map<string, LineIndex>();
  indexes.set(version, known);
  const lines = known.get(uri) ?? new LineIndex(version.snapshot.document(uri)?.text ?? '');
  known.set(uri, lines);
  return lines;
}

export interface Place {
  readonly file: string;
  /** From 1. */
  readonly line: number;
  readonly column: number;
}

export function placeIn(version: Version, { uri, span }: Pick<ChangeSide, 'uri' | 'span'>): Place {
  const { line, character } = linesIn(version, uri).position(span.start);
  return { file: nameIn(version, uri), line: line + 1, column: character + 1 };
}

/** Where a change stands: in the newer version, else in the older one. */
export function placeOf(
  change: { before: ChangeSide | undefined; after: ChangeSide | undefined },
  { before, after }: Reviewed,
): Place | undefined {
  if (change.after !== undefined) return placeIn(after, change.after);
  return change.before === undefined ? undefined : placeIn(before, change.before);
}
