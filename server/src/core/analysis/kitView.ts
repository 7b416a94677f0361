import type { KitDocument, Line } from '../model/generated/types';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentValue } from './documentUnit';
import { FamilyView } from './familyView';
import { followPath } from './links';
import type { Snapshot } from './snapshot';

/** A kit bill and the family that it is for. */
export interface KitView {
  readonly document: SyntaxDocument;
  readonly value: KitDocument;
  readonly lines: readonly Line[];
  /** Undefined where the kit names none that can be read. */
  readonly family: FamilyView | undefined;
  /** Part numbers that a line of this kit supersedes, with the number that does. */
  readonly superseded: ReadonlyMap<string, string>;
}

export function kitViewOf(snapshot: Snapshot, document: SyntaxDocument): KitView | undefined {
  const value = documentValue(document, 'kit');
  if (value === undefined) return undefined;
  const target = value.family === undefined ? undefined : followPath(snapshot, document.uri, value.family);
  const family = target?.is === 'document' ? FamilyView.of(target.document) : undefined;
  const lines = value.lines ?? [];
  return { document, value, lines, family, superseded: supersededBy(lines) };
}

function supersededBy(lines: readonly Line[]): Map<string, string> {
  const superseded = new Map<string, string>();
  for (const line of lines) {
    for (const old of line.replaces ?? []) if (line.number !== undefined) superseded.set(old.text, line.number.text);
    if (line.supersededBy !== undefined && line.number !== undefined)
      superseded.set(line.number.text, line.supersededBy.text);
  }
  return superseded;
}
