import { type CodeAction, type CodeActionParams, CodeActionTriggerKind } from 'vscode-languageserver';
import type { Refactor } from '../core/ide/refactors/refactor';
import { refactorsAt } from '../core/ide/refactors/refactorsAt';
import { REFACTOR_KINDS } from './capabilities';
import type { CheckedDocument } from './checkedDocuments';
import { linesOf, toCoreUri } from './convert';
import type { Session } from './session';
import { workspaceEditOf } from './workspaceEdit';

/** What an action takes along that is worked out once it is chosen. */
interface RefactorData {
  readonly uri: string;
  readonly version: number | undefined;
  readonly offset: number;
  readonly id: string;
}

/** The changes that can be asked for where a range begins; their edits come with them only where the client cannot ask again. */
export function refactorActions(
  session: Session,
  { snapshot, document }: CheckedDocument,
  { textDocument, range, context }: CodeActionParams,
  isWanted: (kind: string) => boolean,
): CodeAction[] {
  const offset = linesOf(document).offset(range.start);
  const isLazy = session.client.textDocument?.codeAction?.resolveSupport?.properties.includes('edit') === true;
  // Nobody has asked, so nothing is worked out that takes long.
  const isIdle = !isLazy && context.triggerKind === CodeActionTriggerKind.Automatic;
  const wanted = (kind: Refactor['kind']) => isWanted(REFACTOR_KINDS[kind]) && !(isIdle && kind === 'rewrite');
  return refactorsAt(snapshot, document, offset, session.host.today(), wanted).flatMap((refactor): CodeAction[] => {
    const base = { title: refactor.title, kind: REFACTOR_KINDS[refactor.kind] };
    const version = session.openDocument(document.uri)?.version;
    const data: RefactorData = { uri: textDocument.uri, version, offset, id: refactor.id };
    if (isLazy) return [{ ...base, data }];
    const edit = editOf(session, { snapshot, document }, refactor);
    return edit === undefined ? [] : [{ ...base, edit }];
  });
}

/** Works out what an action does. Where the text has moved on meanwhile, it does nothing. */
export async function resolveRefactor(session: Session, action: CodeAction): Promise<CodeAction> {
  const data = action.data as RefactorData | undefined;
  const checked = data === undefined ? undefined : await session.checked.of(toCoreUri(data.uri));
  if (data === undefined || checked === undefined) return action;
  const { snapshot, document } = checked;
  if (session.openDocument(document.uri)?.version !== data.version) return action;
  const all = refactorsAt(snapshot, document, data.offset, session.host.today());
  const refactor = all.find(({ id }) => id === data.id);
  const edit = refactor === undefined ? undefined : editOf(session, checked, refactor);
  return edit === undefined ? action : { ...action, edit };
}

function editOf(
  session: Session,
  { snapshot, document }: Pick<CheckedDocument, 'snapshot' | 'document'>,
  refactor: Refactor,
) {
  const edits = refactor.edits()?.map((edit) => ({ uri: document.uri, edit }));
  return edits === undefined ? undefined : workspaceEditOf(session, snapshot, edits);
}
