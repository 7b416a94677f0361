import {
  type ClientCapabilities,
  type CompletionItem,
  type CompletionList,
  type Connection,
  MarkupKind,
} from 'vscode-languageserver';
import type { Uri } from '../../core/analysis/uri';
import type { CandidateAbout } from '../../core/ide/completion/candidate';
import { completionsAt, wantsFiles } from '../../core/ide/completion/complete';
import { describeCandidate, editsOf } from '../../core/ide/completion/resolve';
import { type CompletionData, clientShows, toCompletionItem } from '../completionItem';
import { linesOf, toTextEdit } from '../convert';
import { type CurrentDocument, currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import type { Session } from '../session';

/** More files than anybody looks through in a list. */
const mostFiles = 2000;

export const completion: Feature = {
  register(connection: Connection, session: Session) {
    connection.onCompletion(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const offset = linesOf(current.document).offset(position);
        const files = wantsFiles(current.document, offset) ? await filesFor(session, current) : [];
        return completionList(session.client, current, { offset, files, uri: textDocument.uri });
      }),
    );
    connection.onCompletionResolve((item, token) => session.answer(token, () => resolved(session, item)));
  },
};

interface Asked {
  readonly offset: number;
  readonly files: readonly Uri[];
  /** As the client writes it. */
  readonly uri: string;
}

function completionList(
  client: ClientCapabilities,
  { snapshot, document }: CurrentDocument,
  { offset, files, uri }: Asked,
): CompletionList | null {
  const found = completionsAt({ snapshot, document, offset, files });
  if (found === undefined) return null;
  const lines = linesOf(document);
  const shows = clientShows(client);
  const items = found.candidates.map((candidate, place) => {
    const item = toCompletionItem(candidate, { found, lines, shows, place, uri });
    return shows.resolvesEdits ? item : withEdits(item, { snapshot, document });
  });
  return { isIncomplete: false, items };
}

async function resolved(session: Session, item: CompletionItem): Promise<CompletionItem> {
  const data = dataOf(item);
  const current = data === undefined ? undefined : await currentDocument(session, data.uri);
  if (data === undefined || current === undefined) return item;
  const description = describeCandidate(current.snapshot, current.document, data.about);
  const shows = clientShows(session.client);
  const whole = shows.resolvesEdits ? withEdits(item, current) : item;
  if (description === undefined) return whole;
  const documentation = shows.markdown
    ? { kind: MarkupKind.Markdown, value: description.markdown }
    : { kind: MarkupKind.PlainText, value: description.plain };
  return { ...whole, documentation };
}

function withEdits(item: CompletionItem, { document }: CurrentDocument): CompletionItem {
  const data = dataOf(item);
  const edits = data === undefined ? [] : editsOf(document, data.about);
  if (edits.length === 0) return item;
  return { ...item, additionalTextEdits: edits.map((edit) => toTextEdit(linesOf(document), edit)) };
}

/** What comes back over the wire need not be what went out. */
function dataOf({ data }: CompletionItem): CompletionData | undefined {
  const { uri, about } = (data ?? {}) as { uri?: unknown; about?: unknown };
  return typeof uri === 'string' && isAbout(about) ? { uri, about } : undefined;
}

function isAbout(value: unknown): value is CandidateAbout {
  const { is, id, kind, def, path } = (value ?? {}) as Readonly<Record<string, unknown>>;
  if (is === 'key') return typeof def === 'string' && Array.isArray(path);
  return typeof id === 'string' && (is === 'rule' || (is === 'thing' && typeof kind === 'string'));
}

/** The documents of the folders, and the figures that are known already. */
async function filesFor(session: Session, { snapshot }: CurrentDocument): Promise<Uri[]> {
  const known = [...snapshot.uris].filter((uri) => ['document', 'file'].includes(snapshot.file(uri)?.is ?? ''));
  const files = new Set<Uri>(known);
  for (const folder of session.folders) {
    for await (const uri of session.host.documentsBelow(folder)) {
      files.add(uri);
      if (files.size >= mostFiles) return [...files];
    }
  }
  return [...files];
}
