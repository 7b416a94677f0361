import { type ClientCapabilities, MarkupKind } from 'vscode-languageserver';
import { hoverAt } from '../../core/ide/hover';
import type { HoverText } from '../../core/ide/ruleHover';
import type { CheckedDocument } from '../checkedDocuments';
import { linesOf, toCoreUri, toRange } from '../convert';
import type { Feature } from '../feature';

export const hover: Feature = {
  register(connection, session) {
    connection.onHover(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const checked = await session.checked.of(toCoreUri(textDocument.uri));
        if (checked === undefined) return null;
        const lines = linesOf(checked.document);
        const found = hoverOf(checked, lines.offset(position));
        if (found === undefined) return null;
        const kind = showsMarkdown(session.client) ? MarkupKind.Markdown : MarkupKind.PlainText;
        const value = kind === MarkupKind.Markdown ? found.markdown : found.plain;
        return { contents: { kind, value }, range: toRange(lines, found.span) };
      }),
    );
  },
};

function hoverOf({ snapshot, document, result }: CheckedDocument, offset: number): HoverText | undefined {
  const conceded = result.conceded.map(({ finding }) => finding);
  return hoverAt(snapshot, document, offset, [...result.findings, ...conceded]);
}

/** A client that does not say what it shows is taken to show what nearly all do. */
function showsMarkdown({ textDocument }: ClientCapabilities): boolean {
  return textDocument?.hover?.contentFormat?.includes(MarkupKind.Markdown) ?? true;
}
