import { FoldingRangeKind, type SelectionRange } from 'vscode-languageserver';
import { documentLinksOf } from '../../core/ide/documentLinks';
import { foldsOf } from '../../core/ide/folding';
import { selectionsAt } from '../../core/ide/selection';
import type { Span } from '../../core/text/span';
import { linesOf, toRange } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';

/** What an editor makes of the structure of a document: folds, growing selections, and links on paths. */
export const structure: Feature = {
  register(connection, session) {
    connection.onFoldingRanges(({ textDocument }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        return foldsOf(current.document).map(({ kind, first, last }) => ({
          startLine: first,
          endLine: last,
          ...(kind === 'comment' ? { kind: FoldingRangeKind.Comment } : {}),
        }));
      }),
    );
    connection.onSelectionRanges(({ textDocument, positions }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const lines = linesOf(current.document);
        return positions.map((position) => {
          const spans = selectionsAt(current.document, lines.offset(position));
          return nested(spans.map((span) => toRange(lines, span)));
        });
      }),
    );
    connection.onDocumentLinks(({ textDocument }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const range = (span: Span) => toRange(linesOf(current.document), span);
        return documentLinksOf(current.snapshot, current.document).map(({ span, target }) => ({
          range: range(span),
          target: session.clientUriOf(target),
        }));
      }),
    );
  },
};

/** The protocol has each range hold the next larger one. */
function nested(ranges: readonly SelectionRange['range'][]): SelectionRange {
  const [range = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } }, ...larger] = ranges;
  return larger.length === 0 ? { range } : { range, parent: nested(larger) };
}
