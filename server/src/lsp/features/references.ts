import { DocumentHighlightKind, type Location, type ReferenceParams } from 'vscode-languageserver';
import { highlightsAt } from '../../core/ide/highlight';
import { referencesAt, targetsAt } from '../../core/ide/references';
import { linesOf, toCoreUri, toRange } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import { namingSnapshot } from '../namingSnapshot';
import type { Session } from '../session';
import { type Waiting, whileWaiting } from '../waiting';

/** Every place that names a thing: in all documents of the folders, or marked in the one that is open. */
export const references: Feature = {
  register(connection, session) {
    connection.onReferences((params, token, progress) => {
      const waiting = { token, progress };
      return session.answer(token, () =>
        whileWaiting(waiting, 'Looking for references', () => referencesFor(session, params, waiting)),
      );
    });
    connection.onDocumentHighlight(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const lines = linesOf(current.document);
        const marks = highlightsAt(current.snapshot, current.document, lines.offset(position));
        return marks.map(({ span, kind }) => ({ range: toRange(lines, span), kind: KINDS[kind] }));
      }),
    );
  },
};

const KINDS = { read: DocumentHighlightKind.Read, write: DocumentHighlightKind.Write } as const;

async function referencesFor(session: Session, params: ReferenceParams, waiting: Waiting): Promise<Location[] | null> {
  const { textDocument, position, context } = params;
  const current = await currentDocument(session, textDocument.uri);
  if (current === undefined) return null;
  const offset = linesOf(current.document).offset(position);
  const targets = targetsAt(current.snapshot, current.document, offset);
  if (targets.length === 0) return [];
  const uri = toCoreUri(textDocument.uri);
  const snapshot = await namingSnapshot(session, uri, targets, [], waiting);
  const document = snapshot.document(uri);
  if (document === undefined) return null;
  return referencesAt(snapshot, document, linesOf(document).offset(position))
    .filter(({ declares }) => context.includeDeclaration || !declares)
    .map((one) => ({ uri: session.clientUriOf(one.uri), range: toRange(linesOf(one.document), one.span) }));
}
