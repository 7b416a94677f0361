import type { TextDocumentEdit, TextEdit, WorkspaceEdit } from 'vscode-languageserver';
import type { Snapshot } from '../core/analysis/snapshot';
import type { Uri } from '../core/analysis/uri';
import type { EditIn } from '../core/ide/combineFixes';
import { linesOf, toTextEdit } from './convert';
import type { Session } from './session';

/**
 * Edits of any number of documents as the client takes them; with the version that they were worked out from, where it
 * understands one, so that it refuses them once the text has moved on. Undefined where a document is not known.
 */
export function workspaceEditOf(
  session: Session,
  snapshot: Snapshot,
  edits: readonly EditIn[],
): WorkspaceEdit | undefined {
  const byUri = new Map<Uri, TextEdit[]>();
  for (const { uri, edit } of edits) {
    const document = snapshot.document(uri);
    if (document === undefined) return undefined;
    byUri.set(uri, [...(byUri.get(uri) ?? []), toTextEdit(linesOf(document), edit)]);
  }
  if (session.client.workspace?.workspaceEdit?.documentChanges !== true) {
    return { changes: Object.fromEntries([...byUri].map(([uri, some]) => [session.clientUriOf(uri), some])) };
  }
  return { documentChanges: [...byUri].map(([uri, some]) => documentEdit(session, uri, some)) };
}

function documentEdit(session: Session, uri: Uri, edits: TextEdit[]): TextDocumentEdit {
  const version = session.openDocument(uri)?.version ?? null;
  return { textDocument: { uri: session.clientUriOf(uri), version }, edits };
}
