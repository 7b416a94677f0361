import type { TextEdit } from 'vscode-languageserver';
import { formatDocument, formatRange } from '../../core/ide/format/formatDocument';
import { formatOnType } from '../../core/ide/format/onType';
import type { SyntaxDocument } from '../../core/syntax/readDocument';
import type { LineIndex } from '../../core/text/lineIndex';
import type { TextEdit as SpanEdit } from '../../core/text/span';
import { linesOf, toSpan, toTextEdit } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import type { Session } from '../session';

/** Formats a document, the items that a selection touches, or the line that is being typed. */
export const formatting: Feature = {
  register(connection, session) {
    connection.onDocumentFormatting(({ textDocument }, token) =>
      session.answer(token, () => editsFor(session, textDocument.uri, (document) => formatDocument(document))),
    );
    connection.onDocumentRangeFormatting(({ textDocument, range }, token) =>
      session.answer(token, () =>
        editsFor(session, textDocument.uri, (document, lines) => formatRange(document, toSpan(lines, range))),
      ),
    );
    connection.onDocumentOnTypeFormatting(({ textDocument, position, ch }, token) =>
      session.answer(token, () =>
        editsFor(session, textDocument.uri, (document, lines) => formatOnType(document, lines.offset(position), ch)),
      ),
    );
  },
};

/** Null where there is no such document. */
async function editsFor(
  session: Session,
  uri: string,
  edits: (document: SyntaxDocument, lines: LineIndex) => readonly SpanEdit[],
): Promise<TextEdit[] | null> {
  const current = await currentDocument(session, uri);
  if (current === undefined) return null;
  const lines = linesOf(current.document);
  return edits(current.document, lines).map((edit) => toTextEdit(lines, edit));
}
