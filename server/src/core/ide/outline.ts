import type { SyntaxDocument } from '../syntax/readDocument';
import type { OutlineEntry } from './outlineEntry';
import { groupsIn } from './outlineGroups';
import { phasesIn } from './outlinePhases';

/** The contents of a document in the order of its text, as far as it can be read. Made once for a reading. */
export function outlineOf(document: SyntaxDocument): readonly OutlineEntry[] {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const entries = [...groupsIn(document), ...phasesIn(document)].sort((a, b) => a.span.start - b.span.start);
  remembered.set(document, entries);
  return entries;
}

const remembered = new WeakMap<SyntaxDocument, readonly OutlineEntry[]>();
