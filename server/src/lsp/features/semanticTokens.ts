import type { SemanticTokens } from 'vscode-languageserver';
import type { Uri } from '../../core/analysis/uri';
import { semanticTokensOf } from '../../core/ide/semanticTokens';
import { linesOf, toCoreUri, toSpan } from '../convert';
import { type CurrentDocument, currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import type { Session } from '../session';
import { tokenData, tokenEdits } from '../tokenData';

/** For so many documents it is known what the client has; from one that was not looked at for long, all is sent again. */
const mostRemembered = 32;

/** The colours that only the meaning tells: of a whole document, of a stretch of it, and of what has changed since. */
export const semanticTokens: Feature = {
  register(connection, session) {
    const sent = new SentTokens();
    const { semanticTokens: requests } = connection.languages;
    requests.on(({ textDocument: { uri } }, token) =>
      session.answer(token, async () => sent.send(toCoreUri(uri), await dataOf(session, uri))),
    );
    requests.onDelta(({ textDocument: { uri }, previousResultId }, token) =>
      session.answer(token, async () => {
        const before = sent.data(toCoreUri(uri), previousResultId);
        const now = sent.send(toCoreUri(uri), await dataOf(session, uri));
        if (before === undefined) return now;
        return { resultId: now.resultId ?? '', edits: tokenEdits(before, now.data) };
      }),
    );
    requests.onRange(({ textDocument: { uri }, range }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, uri);
        if (current === undefined) return { data: [] };
        return { data: dataIn(current, toSpan(linesOf(current.document), range)) };
      }),
    );
  },
};

async function dataOf(session: Session, uri: string): Promise<number[]> {
  const current = await currentDocument(session, uri);
  return current === undefined ? [] : dataIn(current);
}

function dataIn({ snapshot, document }: CurrentDocument, within?: Parameters<typeof semanticTokensOf>[2]): number[] {
  return tokenData(linesOf(document), semanticTokensOf(snapshot, document, within));
}

/** What the client was sent last for each document, so that only what differs has to be sent. */
class SentTokens {
  readonly #last = new Map<Uri, SemanticTokens>();
  #count = 0;

  send(uri: Uri, data: number[]): SemanticTokens {
    this.#count += 1;
    const tokens = { resultId: String(this.#count), data };
    this.#last.delete(uri);
    this.#last.set(uri, tokens);
    const [oldest] = this.#last.keys();
    if (this.#last.size > mostRemembered && oldest !== undefined) this.#last.delete(oldest);
    return tokens;
  }

  data(uri: Uri, resultId: string): readonly number[] | undefined {
    const last = this.#last.get(uri);
    return last?.resultId === resultId ? last.data : undefined;
  }
}
