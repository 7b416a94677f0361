import type { Diagnostic, Range, TextEdit } from 'vscode-languageserver';
import { DiagnosticSeverity, DiagnosticTag } from 'vscode-languageserver';
import type { Severity } from '../core/analysis/settings';
import type { Snapshot } from '../core/analysis/snapshot';
import type { Uri } from '../core/analysis/uri';
import type { ConcededFinding } from '../core/rules/checkDocument';
import { type Finding, fullMessage, type RelatedPlace } from '../core/rules/finding';
import type { SyntaxDocument } from '../core/syntax/readDocument';
import { LineIndex } from '../core/text/lineIndex';
import type { Span, TextEdit as SpanEdit } from '../core/text/span';

/*
 * The only place where the core's terms and the protocol's meet: offsets and positions, plain and percent-encoded URIs,
 * findings and diagnostics.
 */

/** The core's URI of a client's: not percent-encoded. Text that is no proper encoding is taken as it stands. */
export function toCoreUri(clientUri: string): Uri {
  // What comes over the wire need not be what its type says.
  if (typeof clientUri !== 'string') throw new TypeError('A document is named by its URI, a text');
  try {
    return decodeURIComponent(clientUri);
  } catch {
    return clientUri;
  }
}

/** A URI that any client can read. A client's own spelling may differ, so what it has opened keeps the client's. */
export function toClientUri(uri: Uri): string {
  const [, scheme = '', rest = ''] = /^([a-z][a-z0-9+.-]*:)?([\s\S]*)$/i.exec(uri) ?? [];
  return scheme + rest.split('/').map(encodeURIComponent).join('/');
}

const indexes = new WeakMap<SyntaxDocument, LineIndex>();

/** The lines of a reading of a document, counted once. */
export function linesOf(document: SyntaxDocument): LineIndex {
  const known = indexes.get(document) ?? new LineIndex(document.content);
  indexes.set(document, known);
  return known;
}

export function toRange(lines: LineIndex, span: Span): Range {
  return { start: lines.position(span.start), end: lines.position(span.end) };
}

export function toSpan(lines: LineIndex, range: Range): Span {
  const start = lines.offset(range.start);
  return { start, end: Math.max(start, lines.offset(range.end)) };
}

export function toTextEdit(lines: LineIndex, edit: SpanEdit): TextEdit {
  return { range: toRange(lines, edit.span), newText: edit.text };
}

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  info: DiagnosticSeverity.Information,
};

/** What a diagnostic needs to know beside its finding. */
export interface DiagnosticContext {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  /** Whether the client shows related places. */
  readonly related: boolean;
  /** The tags that the client shows. */
  readonly tags: readonly DiagnosticTag[];
  clientUriOf(uri: Uri): string;
  /** Where the client can open the page of a rule. */
  pageOf(rule: string): string | undefined;
}

export function toDiagnostic(finding: Finding, context: DiagnosticContext): Diagnostic {
  const related = context.related ? finding.related.flatMap((place) => relatedPlace(place, context)) : [];
  const href = context.pageOf(finding.rule);
  const tags = tagsOf(finding.rule).filter((tag) => context.tags.includes(tag));
  return {
    range: toRange(linesOf(context.document), finding.span),
    severity: SEVERITIES[finding.severity],
    code: finding.rule,
    ...(href === undefined ? {} : { codeDescription: { href } }),
    source: 'witnessmark',
    message: fullMessage(finding),
    ...(related.length === 0 ? {} : { relatedInformation: related }),
    ...(tags.length === 0 ? {} : { tags }),
  };
}

/** What nothing needs is shown faintly, and what has been replaced by something newer is struck through. */
function tagsOf(rule: string): DiagnosticTag[] {
  if (rule.endsWith('-unused')) return [DiagnosticTag.Unnecessary];
  return rule.endsWith('-superseded') ? [DiagnosticTag.Deprecated] : [];
}

/** A concession never hides what it lets stand: it is shown where it stands, quietly. */
export function toConcededDiagnostic({ finding, concession }: ConcededFinding, context: DiagnosticContext): Diagnostic {
  const until = concession.until?.day === undefined ? '' : ` until ${concession.until.day}`;
  const diagnostic = toDiagnostic(finding, context);
  return {
    ...diagnostic,
    severity: DiagnosticSeverity.Hint,
    message: `Let stand by a concession${until}: ${diagnostic.message}`,
  };
}

function relatedPlace(place: RelatedPlace, { snapshot, clientUriOf }: DiagnosticContext) {
  const document = snapshot.document(place.uri);
  if (document === undefined) return [];
  const location = { uri: clientUriOf(place.uri), range: toRange(linesOf(document), place.span) };
  return [{ location, message: place.message }];
}
