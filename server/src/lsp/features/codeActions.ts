import { type CodeAction, CodeActionKind, type CodeActionParams, type Diagnostic } from 'vscode-languageserver';
import { type FixAction, fixAllSafe, fixesAt } from '../../core/ide/codeActions';
import { FIX_ALL } from '../capabilities';
import type { CheckedDocument } from '../checkedDocuments';
import { linesOf, toCoreUri, toDiagnostic, toSpan } from '../convert';
import type { Feature } from '../feature';
import { refactorActions, resolveRefactor } from '../refactorActions';
import type { Session } from '../session';
import { workspaceEditOf } from '../workspaceEdit';

/** Quick fixes where the caret is, all safe fixes of a document at once, and changes that mend nothing but are asked for. */
export const codeActions: Feature = {
  register(connection, session) {
    connection.onCodeAction((params, token) =>
      session.answer(token, async () => {
        const checked = await session.checked.of(toCoreUri(params.textDocument.uri));
        if (checked === undefined) return [];
        const refactors = refactorActions(session, checked, params, (kind) => isWanted(params, kind));
        return [...actionsFor(session, checked, params), ...refactors];
      }),
    );
    connection.onCodeActionResolve((action, token) => session.answer(token, () => resolveRefactor(session, action)));
  },
};

function actionsFor(session: Session, checked: CheckedDocument, params: CodeActionParams): CodeAction[] {
  const { findings } = checked.result;
  const span = toSpan(linesOf(checked.document), params.range);
  const quick = isWanted(params, CodeActionKind.QuickFix) ? fixesAt(findings, span) : [];
  const all = isWanted(params, FIX_ALL) ? fixAllSafe(findings, checked.document.uri) : undefined;
  return [...quick, ...(all === undefined ? [] : [all])].flatMap((action) => {
    const edit = workspaceEditOf(session, checked.snapshot, action.edits);
    if (edit === undefined) return [];
    const base = { title: action.title, kind: action.kind === 'all-safe' ? FIX_ALL : CodeActionKind.QuickFix, edit };
    if (action.kind === 'all-safe') return [base];
    const diagnostics = diagnosticsOf(session, checked, action, params.context.diagnostics);
    return [{ ...base, diagnostics, ...(action.preferred ? { isPreferred: true } : {}) }];
  });
}

/** A kind that is asked for stands for all below it, so `source` asks for `source.fixAll.witnessmark` too. */
function isWanted({ context }: CodeActionParams, kind: string): boolean {
  return context.only === undefined || context.only.some((only) => kind === only || kind.startsWith(`${only}.`));
}

/** The client's own diagnostics where it named them, so that it sees which of them the action mends. */
function diagnosticsOf(
  session: Session,
  { snapshot, document }: CheckedDocument,
  action: FixAction,
  shown: readonly Diagnostic[],
): Diagnostic[] {
  const clientUriOf = (uri: string) => session.clientUriOf(uri);
  const context = { snapshot, document, related: false, tags: [], clientUriOf, pageOf: () => undefined };
  return action.findings.map((finding) => {
    const own = toDiagnostic(finding, context);
    return shown.find((one) => isSame(one, own)) ?? own;
  });
}

function isSame(a: Diagnostic, b: Diagnostic): boolean {
  const placeOf = ({ range: { start, end } }: Diagnostic) => [start.line, start.character, end.line, end.character];
  return a.code === b.code && a.message === b.message && placeOf(a).join() === placeOf(b).join();
}
