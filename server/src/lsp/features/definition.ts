import type { ClientCapabilities, Location, LocationLink } from 'vscode-languageserver';
import { type Definition, type DefinitionLink, definitionAt } from '../../core/ide/definition';
import { LineIndex } from '../../core/text/lineIndex';
import { linesOf, toRange } from '../convert';
import { type CurrentDocument, currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import type { Session } from '../session';

/** Goes from an id to where it is declared, and from a path to the file. */
export const definition: Feature = {
  register(connection, session) {
    connection.onDefinition(({ textDocument, position }, token) =>
      session.answer(token, async () => {
        const current = await currentDocument(session, textDocument.uri);
        if (current === undefined) return null;
        const { snapshot, document } = current;
        const link = definitionAt(snapshot, document, linesOf(document).offset(position));
        if (link === undefined) return null;
        return takesLinks(session.client) ? toLinks(session, current, link) : toLocations(session, current, link);
      }),
    );
  },
};

function takesLinks({ textDocument }: ClientCapabilities): boolean {
  return textDocument?.definition?.linkSupport === true;
}

function toLinks(session: Session, current: CurrentDocument, { from, definitions }: DefinitionLink): LocationLink[] {
  const originSelectionRange = toRange(linesOf(current.document), from);
  return definitions.map((one) => ({
    originSelectionRange,
    targetUri: session.clientUriOf(one.uri),
    targetRange: toRange(linesAt(current, one), one.whole),
    targetSelectionRange: toRange(linesAt(current, one), one.span),
  }));
}

function toLocations(session: Session, current: CurrentDocument, { definitions }: DefinitionLink): Location[] {
  return definitions.map((one) => ({
    uri: session.clientUriOf(one.uri),
    range: toRange(linesAt(current, one), one.span),
  }));
}

/** A figure has no lines of ours, and only its start is asked for. */
function linesAt({ snapshot }: CurrentDocument, { uri }: Definition): LineIndex {
  const document = snapshot.document(uri);
  return document === undefined ? new LineIndex('') : linesOf(document);
}
