import { withOtherText } from '../analysis/otherText';
import type { Snapshot } from '../analysis/snapshot';
import { fileNameOf, type Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';
import { LineIndex } from '../text/lineIndex';
import { applyEdits, type TextEdit } from '../text/span';
import type { EditIn } from './combineFixes';
import { declarationOf, type IdTarget, targetsOf } from './idTarget';
import { idUseAt } from './idUses';
import { referencesTo, targetsAt } from './references';

export interface ProposedRename {
  readonly snapshot: Snapshot;
  readonly target: IdTarget;
  readonly name: string;
  readonly edits: readonly EditIn[];
}

/**
 * Makes a renaming on a copy of the snapshot and reads that: each place must name the same thing as before. Says in
 * words what would change; undefined where nothing does. So every way in which a name is read differently, as a word
 * that means something by itself, is found without a list of such ways.
 */
export function changedMeaning({ snapshot, target, name, edits }: ProposedRename): string | undefined {
  const changes = changesByUri(edits);
  const after = applied(snapshot, changes);
  const declaration = declarationOf(target);
  const document = declaration === undefined ? undefined : after.document(declaration.document.uri);
  if (declaration === undefined || document === undefined) return undefined;
  const at = declaration.document.spanOf(declaration.range).end;
  const shifted = shift(changes.get(document.uri) ?? [], at);
  const found = referencesTo(after, targetsAt(after, document, shifted));
  const places = new Set(found.map(({ uri, span }) => placeKey(uri, span.start)));
  const wanted = edits.filter(({ edit }) => edit.text.endsWith(name)).map((one) => expectedPlace(changes, one, name));
  const lost = wanted.find(({ uri, start }) => !places.has(placeKey(uri, start)));
  if (lost !== undefined) return otherwiseRead(after.document(lost.uri), lost.start, name);
  const expected = new Set(wanted.map(({ uri, start }) => placeKey(uri, start)));
  const gained = found.find(
    ({ uri, span }) => !expected.has(placeKey(uri, span.start)) && hadMeaning(snapshot, changes, uri, span.start),
  );
  return gained === undefined ? undefined : otherwiseRead(gained.document, gained.span.start, name);
}

function otherwiseRead(document: SyntaxDocument | undefined, offset: number, name: string): string {
  const line = document === undefined ? 0 : new LineIndex(document.text).position(offset).line + 1;
  return `"${name}" would mean something else on line ${line} of ${fileNameOf(document?.uri ?? '')}`;
}

/** A place that named nothing before may well name something now: its writer was ahead. */
function hadMeaning(snapshot: Snapshot, changes: Changes, uri: Uri, offset: number): boolean {
  const document = snapshot.document(uri);
  const use = document === undefined ? undefined : idUseAt(document, shiftBack(changes.get(uri) ?? [], offset));
  return document !== undefined && use !== undefined && targetsOf(snapshot, document, use).length > 0;
}

type Changes = ReadonlyMap<Uri, readonly TextEdit[]>;

function changesByUri(edits: readonly EditIn[]): Changes {
  const byUri = new Map<Uri, TextEdit[]>();
  for (const { uri, edit } of edits) byUri.set(uri, [...(byUri.get(uri) ?? []), edit]);
  return byUri;
}

function applied(snapshot: Snapshot, changes: Changes): Snapshot {
  let after = snapshot;
  for (const [uri, edits] of changes) {
    const document = after.document(uri);
    if (document !== undefined) after = withOtherText(after, document, applyEdits(document.text, edits)).snapshot;
  }
  return after;
}

/** Where the new id of an edit begins once all edits are made; a kind may stand before it. */
function expectedPlace(changes: Changes, { uri, edit }: EditIn, name: string): { uri: Uri; start: number } {
  return { uri, start: shift(changes.get(uri) ?? [], edit.span.end) - name.length };
}

function shift(edits: readonly TextEdit[], offset: number): number {
  const before = edits.filter(({ span }) => span.end <= offset);
  return before.reduce((sum, { span, text }) => sum + text.length - (span.end - span.start), offset);
}

function shiftBack(edits: readonly TextEdit[], offset: number): number {
  const sorted = [...edits].sort((a, b) => a.span.start - b.span.start);
  let at = offset;
  for (const { span, text } of sorted) {
    if (span.start + text.length > at) break;
    at -= text.length - (span.end - span.start);
  }
  return at;
}

function placeKey(uri: Uri, start: number): string {
  return `${uri} ${start}`;
}
