import { LSPErrorCodes, type RenameParams, ResponseError, type WorkspaceEdit } from 'vscode-languageserver';
import { prepareRename, renameAt } from '../../core/ide/rename';
import { throwIfCancelled } from '../cancelled';
import { linesOf, toCoreUri, toRange } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import { namingSnapshot } from '../namingSnapshot';
import type { Session } from '../session';
import { type Waiting, whileWaiting } from '../waiting';
import { workspaceEditOf } from '../workspaceEdit';

/** Gives an id another name in every document of the folders that reaches it; says why where that cannot be. */
export const rename: Feature = {
  register(connection, session) {
    connection.onPrepareRename(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const lines = linesOf(current.document);
        const start = prepareRename(current.snapshot, current.document, lines.offset(position));
        if (start.is === 'refused') return refusal(start.why);
        return { range: toRange(lines, start.span), placeholder: start.name };
      }),
    );
    connection.onRenameRequest((params, token, progress) => {
      const waiting = { token, progress };
      return session.answer(token, () => whileWaiting(waiting, 'Renaming', () => renamed(session, params, waiting)));
    });
  },
};

async function renamed(
  session: Session,
  { textDocument, position, newName: written }: RenameParams,
  waiting: Waiting,
): Promise<WorkspaceEdit | ResponseError | null> {
  const newName = written.trim();
  const current = await currentDocument(session, textDocument.uri);
  if (current === undefined) return null;
  const offset = linesOf(current.document).offset(position);
  const start = prepareRename(current.snapshot, current.document, offset);
  if (start.is === 'refused') return refusal(start.why);
  const uri = toCoreUri(textDocument.uri);
  const snapshot = await namingSnapshot(session, uri, [start.target], [newName], waiting);
  throwIfCancelled(waiting.token);
  const document = snapshot.document(uri);
  if (document === undefined) return null;
  const renaming = renameAt(snapshot, document, linesOf(document).offset(position), newName);
  if (renaming.is === 'refused') return refusal(renaming.why);
  return workspaceEditOf(session, snapshot, renaming.edits) ?? null;
}

function refusal(why: string): ResponseError {
  return new ResponseError(LSPErrorCodes.RequestFailed, why);
}
