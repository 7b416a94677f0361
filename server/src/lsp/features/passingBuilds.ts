import { ProcedureView } from '../../core/analysis/procedureView';
import { buildsPassing, failingBuilds } from '../../core/ide/buildsPassing';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';
import {
  BUILDS_PASSING,
  type BuildsParams,
  type BuildsPassingResult,
  FAILING_BUILDS,
  type FailingBuildsResult,
} from '../protocol';
import type { Session } from '../session';

const MOST_LISTED = 200;

/** How many builds of a procedure have no error, and which have one. Requests of our own, for any client that shows it. */
export const passingBuilds: Feature = {
  register(connection, session) {
    connection.onRequest(BUILDS_PASSING.method, ({ uri }: BuildsParams, token) =>
      session.answer(token, () => passing(session, uri)),
    );
    connection.onRequest(FAILING_BUILDS.method, ({ uri }: BuildsParams, token) =>
      session.answer(token, () => failing(session, uri)),
    );
  },
};

async function passing(session: Session, clientUri: string): Promise<BuildsPassingResult> {
  const uri = toCoreUri(clientUri);
  session.sheetsShown.add(uri);
  const checked = await session.checked.of(uri);
  const procedure = checked === undefined ? undefined : ProcedureView.of(checked.snapshot, checked.document);
  const counted = procedure === undefined ? undefined : buildsPassing(procedure, checked?.result.findings ?? []);
  return { count: counted?.count, passing: counted?.passing };
}

async function failing(session: Session, clientUri: string): Promise<FailingBuildsResult> {
  const checked = await session.checked.of(toCoreUri(clientUri));
  const procedure = checked === undefined ? undefined : ProcedureView.of(checked.snapshot, checked.document);
  if (checked === undefined || procedure === undefined) return { builds: [], count: 0 };
  const { findings } = checked.result;
  const counted = buildsPassing(procedure, findings);
  const builds = failingBuilds(procedure, findings, MOST_LISTED).map(({ id, label, error }) => {
    const { start, end } = error.span;
    return { id, label, error: { message: error.message, start, end } };
  });
  return { builds, count: counted === undefined ? 0 : counted.count - counted.passing };
}
