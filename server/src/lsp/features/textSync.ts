import { documentKindOf } from '../../core/syntax/documentKind';
import { DocumentText } from '../../core/text/documentText';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';
import { applyChanges } from '../openDocument';

/** The texts of open documents, as the client types them. Files that are no document of ours by their name are let be. */
export const textSync: Feature = {
  register(connection, session) {
    connection.onDidOpenTextDocument(({ textDocument }) =>
      session.hear(() => {
        const { uri: clientUri, version, text } = textDocument;
        const uri = toCoreUri(clientUri);
        if (documentKindOf(uri) === undefined) return;
        session.setOpen({ uri, clientUri, version, content: DocumentText.of(text) });
        session.diagnostics.changed(uri);
      }),
    );
    connection.onDidChangeTextDocument(({ textDocument, contentChanges }) =>
      session.hear(() => {
        const uri = toCoreUri(textDocument.uri);
        const open = session.openDocument(uri);
        if (open === undefined) return;
        const content = applyChanges(open.content, contentChanges);
        session.setOpen({ ...open, version: textDocument.version, content });
        session.diagnostics.typed(uri);
      }),
    );
    connection.onDidCloseTextDocument(({ textDocument }) =>
      session.hear(() => {
        const uri = toCoreUri(textDocument.uri);
        if (session.openDocument(uri) === undefined) return;
        session.setClosed(uri);
        session.diagnostics.changed(uri);
      }),
    );
    connection.onDidSaveTextDocument(() => session.hear(() => session.fileSaved()));
  },
};
