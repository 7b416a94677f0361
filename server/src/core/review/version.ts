import { ProcedureView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';

/** All documents of a folder as they were at one time, with everything that they link to loaded. */
export interface Version {
  readonly snapshot: Snapshot;
  /** The folder; the same in both versions, or another one. */
  readonly root: Uri;
  /** URIs of the documents, without those that are only linked to from outside. */
  readonly uris: readonly Uri[];
}

/** A document's path within its folder: what it is called in both versions. */
export function nameIn({ root }: Version, uri: Uri): string {
  return uri.startsWith(`${root}/`) ? uri.slice(root.length + 1) : uri;
}

export function documentsOf({ snapshot, uris }: Version): SyntaxDocument[] {
  return uris.flatMap((uri) => snapshot.document(uri) ?? []);
}

const procedures = new WeakMap<Version, readonly ProcedureView[]>();

/** The procedures of a version, read once. */
export function proceduresOf(version: Version): readonly ProcedureView[] {
  const known = procedures.get(version);
  if (known !== undefined) return known;
  const views = documentsOf(version).flatMap((document) => ProcedureView.of(version.snapshot, document) ?? []);
  procedures.set(version, views);
  return views;
}
