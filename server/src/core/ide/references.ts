import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { type IdTarget, idOfTarget, keyOfTarget, targetsOf } from './idTarget';
import { type IdUse, idUseAt, idUsesIn } from './idUses';

/** A place where something is named. */
export interface Reference {
  readonly uri: Uri;
  readonly document: SyntaxDocument;
  readonly use: IdUse;
  readonly span: Span;
  /** It is declared here, and not only named. */
  readonly declares: boolean;
}

/** What the id at an offset stands for. */
export function targetsAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): IdTarget[] {
  const use = idUseAt(document, offset);
  return use === undefined ? [] : targetsOf(snapshot, document, use);
}

/** Every place in the documents of a snapshot that names what the id at an offset names, each document by its text. */
export function referencesAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): Reference[] {
  return referencesTo(snapshot, targetsAt(snapshot, document, offset));
}

export function referencesTo(snapshot: Snapshot, targets: readonly IdTarget[]): Reference[] {
  if (targets.length === 0) return [];
  return [...snapshot.uris].flatMap((uri) => {
    const document = snapshot.document(uri);
    return document === undefined ? [] : referencesIn(snapshot, document, targets);
  });
}

/** The places in one document. A part of one family is not the part with the same id of another: what links there decides. */
export function referencesIn(snapshot: Snapshot, document: SyntaxDocument, targets: readonly IdTarget[]): Reference[] {
  const keys = new Set(targets.map(keyOfTarget));
  const found = usesThatMayName(document, targets).filter((use) =>
    targetsOf(snapshot, document, use).some((target) => keys.has(keyOfTarget(target))),
  );
  return found
    .map((use) => {
      const declares = use.is === 'declared' || use.is === 'value-listed';
      return { uri: document.uri, document, use, span: document.spanOf(use.range), declares };
    })
    .sort((a, b) => a.span.start - b.span.start);
}

function usesThatMayName(document: SyntaxDocument, targets: readonly IdTarget[]): readonly IdUse[] {
  const uses = idUsesIn(document);
  const ids = new Set(targets.flatMap((target) => idOfTarget(target) ?? []));
  const named = [...ids].flatMap((id) => uses.get(id) ?? []);
  if (!targets.some((target) => target.is === 'file')) return named;
  return [...named, ...[...uses.values()].flat().filter((use) => use.is === 'path')];
}
