import { compareFindings } from '../../core/review/findingsChange';
import { documentsOf, type Version } from '../../core/review/version';
import type { Reviewed } from '../../core/reviewPage/reviewed';
import { reviewBody, reviewPageStyles } from '../../core/reviewPage/reviewHtml';
import { sumLine } from '../../core/reviewPage/sumLine';
import { checkDocument } from '../../core/rules/checkDocument';
import type { Finding } from '../../core/rules/finding';
import { toCoreUri } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import {
  COMPARE,
  type CompareParams,
  type CompareResult,
  SHEET_CHANGED,
  SOURCES,
  type SourcesParams,
  type SourcesResult,
} from '../protocol';
import { refreshViews } from '../refreshViews';
import type { Session } from '../session';

/** What has changed since an earlier text that the client has got hold of. Requests of our own, for our own client. */
export const comparing: Feature = {
  register(connection, session) {
    connection.onRequest(SOURCES.method, (params: SourcesParams, token) =>
      session.answer(token, () => sources(session, params)),
    );
    connection.onRequest(COMPARE.method, (params: CompareParams, token) =>
      session.answer(token, () => compared(session, params)),
    );
  },
};

async function sources(session: Session, { uri }: SourcesParams): Promise<SourcesResult> {
  const current = await currentDocument(session, uri);
  if (current === undefined) return { uris: [] };
  const uris = session.comparisons.sourcesOf(current.snapshot, current.document.uri);
  return { uris: uris.map((one) => session.clientUriOf(one)) };
}

async function compared(session: Session, params: CompareParams): Promise<CompareResult> {
  const uri = toCoreUri(params.uri);
  const { comparisons } = session;
  if (params.texts === undefined) comparisons.stop(uri);
  else {
    const texts = new Map(params.texts.map((one) => [toCoreUri(one.uri), one.text]));
    const current = await currentDocument(session, params.uri);
    await comparisons.compareWith(uri, params.label, texts, current?.snapshot ?? session.workspace.snapshot);
  }
  refreshViews(session);
  if (session.sheetsShown.has(uri)) void session.connection.sendNotification(SHEET_CHANGED.method, { uri: params.uri });
  return pageOf(session, params);
}

async function pageOf(session: Session, { uri: clientUri }: CompareParams): Promise<CompareResult> {
  const current = await currentDocument(session, clientUri);
  const uri = toCoreUri(clientUri);
  const earlier = session.comparisons.of(uri);
  const made = current === undefined ? undefined : session.comparisons.comparisonOf(uri, current.snapshot);
  if (earlier === undefined || made === undefined) return { body: '', style: '', sum: '' };
  const today = session.host.today();
  const reviewed: Reviewed = {
    labels: { before: earlier.label, after: 'the text as it is now' },
    before: earlier.version,
    after: made.now,
    files: [],
    changes: made.comparison.changes,
    findings: compareFindings(findingsIn(earlier.version, today), findingsIn(made.now, today), ({ uri: at }) => at),
  };
  return { body: reviewBody(reviewed, 'editor'), style: reviewPageStyles, sum: sumLine(reviewed) };
}

function findingsIn(version: Version, today: string): Finding[] {
  return documentsOf(version).flatMap((document) => checkDocument(version.snapshot, document, { today }).findings);
}
