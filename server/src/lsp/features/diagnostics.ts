import {
  type DocumentDiagnosticParams,
  type DocumentDiagnosticReport,
  DocumentDiagnosticReportKind,
} from 'vscode-languageserver';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';
import { diagnosticsIn, NOTHING_FOUND } from '../findingsReport';
import type { Session } from '../session';
import { WorkspaceReport } from '../workspaceReport';

/** Findings for a client that asks for them, of one document or of all. Any other client is sent them. */
export const diagnostics: Feature = {
  register(connection, session) {
    connection.languages.diagnostics.on((params, token) =>
      session.answer(token, () => documentReport(session, params)),
    );
    connection.languages.diagnostics.onWorkspace((params, token, progress, results) =>
      session.answer(token, () =>
        new WorkspaceReport(session, params.previousResultIds, token).answer(progress, results),
      ),
    );
  },
};

async function documentReport(
  session: Session,
  { textDocument, previousResultId }: DocumentDiagnosticParams,
): Promise<DocumentDiagnosticReport> {
  const report = (await session.diagnostics.asked.answer(toCoreUri(textDocument.uri))) ?? NOTHING_FOUND;
  if (report.id === previousResultId) return { kind: DocumentDiagnosticReportKind.Unchanged, resultId: report.id };
  return { kind: DocumentDiagnosticReportKind.Full, resultId: report.id, items: diagnosticsIn(report) };
}
