import type { Snapshot } from '../core/analysis/snapshot';
import type { SyntaxDocument } from '../core/syntax/readDocument';
import { toCoreUri } from './convert';
import type { Session } from './session';

/** A document as it is now, among all that it links to. */
export interface CurrentDocument {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
}

/** Reads a document and what it links to, without checking it. Undefined where there is no such document. */
export async function currentDocument(session: Session, clientUri: string): Promise<CurrentDocument | undefined> {
  const uri = toCoreUri(clientUri);
  await session.workspace.loadLinked(uri, session.files);
  const { snapshot } = session.workspace;
  const document = snapshot.document(uri);
  return document === undefined ? undefined : { snapshot, document };
}
