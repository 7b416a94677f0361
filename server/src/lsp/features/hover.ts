import { MarkupKind } from 'vscode-languageserver';
import { ruleHover } from '../../core/ide/ruleHover';
import { linesOf, toCoreUri, toRange } from '../convert';
import type { Feature } from '../feature';

export const hover: Feature = {
  capability: () => ({ hoverProvider: true }),
  register(connection, session) {
    connection.onHover(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const document = (await session.checked.of(toCoreUri(textDocument.uri)))?.document;
        if (document === undefined) return null;
        const lines = linesOf(document);
        const found = ruleHover(document, lines.offset(position));
        if (found === undefined) return null;
        return { contents: { kind: MarkupKind.Markdown, value: found.markdown }, range: toRange(lines, found.span) };
      }),
    );
  },
};
