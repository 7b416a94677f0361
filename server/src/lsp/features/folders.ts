import { DidChangeWorkspaceFoldersNotification } from 'vscode-languageserver';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';

/** The folders that are open, of which there may be several, and which may change. */
export const folders: Feature = {
  register(connection, session) {
    connection.onNotification(DidChangeWorkspaceFoldersNotification.type, ({ event }) =>
      session.hear(async () => {
        const gone = new Set(event.removed.map((folder) => toCoreUri(folder.uri)));
        const added = event.added.map((folder) => toCoreUri(folder.uri));
        session.setFolders([...session.folders.filter((folder) => !gone.has(folder)), ...added]);
        session.diagnostics.recheckAll();
        await session.scanFolders(added);
      }),
    );
  },
};
