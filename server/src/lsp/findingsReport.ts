import { type ClientCapabilities, type Diagnostic, DiagnosticTag } from 'vscode-languageserver';
import type { CheckedDocument } from './checkedDocuments';
import { type DiagnosticContext, toConcededDiagnostic, toDiagnostic } from './convert';
import { digestOf } from './digest';
import type { Session } from './session';

/** What was found in a document, as the client takes it. */
export interface FindingsReport {
  /** The same for the same findings, also in another run of the server. */
  readonly id: string;
  /** The findings as JSON: they are kept for thousands of documents that nobody looks at. */
  readonly text: string;
}

/** What stands for a document in which nothing was found. */
export const NOTHING_FOUND: FindingsReport = reportOf([]);

const known = new WeakMap<CheckedDocument, FindingsReport>();

/** The findings of a checked document. Asked for twice, it is made once. */
export function findingsReport(session: Session, checked: CheckedDocument): FindingsReport {
  const report = known.get(checked) ?? reportOf(diagnosticsOf(session, checked));
  known.set(checked, report);
  return report;
}

export function diagnosticsIn(report: FindingsReport): Diagnostic[] {
  return JSON.parse(report.text);
}

function reportOf(diagnostics: readonly Diagnostic[]): FindingsReport {
  const text = JSON.stringify(diagnostics);
  return { id: digestOf(text), text };
}

function diagnosticsOf(session: Session, { snapshot, document, result }: CheckedDocument): Diagnostic[] {
  const { related, tags, pages } = shownBy(session.client);
  const context: DiagnosticContext = {
    snapshot,
    document,
    related,
    tags,
    clientUriOf: (uri) => session.clientUriOf(uri),
    pageOf: (rule) => (pages ? session.host.rulePage?.(rule) : undefined),
  };
  return [
    ...result.findings.map((finding) => toDiagnostic(finding, context)),
    ...result.conceded.map((conceded) => toConcededDiagnostic(conceded, context)),
  ];
}

/** What of a diagnostic a client shows. It says so for those that it is sent, or for those that it asks for. */
function shownBy({ textDocument }: ClientCapabilities) {
  const said = [textDocument?.publishDiagnostics, textDocument?.diagnostic];
  const tags = said.flatMap((one) => one?.tagSupport?.valueSet ?? []);
  return {
    related: said.some((one) => one?.relatedInformation === true),
    pages: said.some((one) => one?.codeDescriptionSupport === true),
    tags: [DiagnosticTag.Unnecessary, DiagnosticTag.Deprecated].filter((tag) => tags.includes(tag)),
  };
}
