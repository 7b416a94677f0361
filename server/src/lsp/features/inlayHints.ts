import { type InlayHint, type MarkupContent, MarkupKind } from 'vscode-languageserver';
import { type HintKind, hintDetail, inlayHintsIn } from '../../core/ide/inlayHints';
import { linesOf, toCoreUri, toSpan } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import type { Session } from '../session';

/** What a hint needs to be found again when somebody points at it. */
interface HintData {
  readonly uri: string;
  readonly kind: HintKind;
}

/** Second units, directions of turn and kit items, written between the words of what the editor shows. */
export const inlayHints: Feature = {
  register(connection, session) {
    const { inlayHint } = connection.languages;
    inlayHint.on(({ textDocument: { uri }, range }, token) =>
      session.answer(token, async () => {
        const { hints } = await session.configuration(toCoreUri(uri));
        const current = await currentDocument(session, uri);
        if (current === undefined) return null;
        const lines = linesOf(current.document);
        const found = inlayHintsIn(current.snapshot, current.document, toSpan(lines, range), hints);
        return found.map(
          ({ kind, offset, label }): InlayHint => ({
            position: lines.position(offset),
            label,
            paddingLeft: true,
            data: { uri, kind } satisfies HintData,
          }),
        );
      }),
    );
    inlayHint.resolve((hint, token) => session.answer(token, async () => withTooltip(session, hint)));
  },
};

async function withTooltip(session: Session, hint: InlayHint): Promise<InlayHint> {
  const data = hint.data as HintData | undefined;
  const current = data === undefined ? undefined : await currentDocument(session, data.uri);
  if (data === undefined || current === undefined) return hint;
  const { snapshot, document } = current;
  const detail = hintDetail(snapshot, document, data.kind, linesOf(document).offset(hint.position));
  if (detail === undefined) return hint;
  const tooltip: MarkupContent = { kind: MarkupKind.Markdown, value: detail.markdown };
  return { ...hint, tooltip };
}
