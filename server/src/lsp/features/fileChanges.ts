import {
  DidChangeWatchedFilesNotification,
  DidDeleteFilesNotification,
  DidRenameFilesNotification,
} from 'vscode-languageserver';
import { toCoreUri } from '../convert';
import type { Feature } from '../feature';

const WATCHED = ['**/*.{family,kit,stores,procedure}.{yaml,yml}', '**/witnessmark.{yaml,yml}', '**/*.svg'];

/**
 * Files that come, go and change on disk, whoever does it. Watchers of files say nothing when a whole folder goes or
 * moves, so that is heard from the client.
 */
export const fileChanges: Feature = {
  register(connection, session) {
    connection.onDidChangeWatchedFiles(({ changes }) =>
      session.hear(() => session.filesChanged(changes.map((change) => toCoreUri(change.uri)))),
    );
    connection.onNotification(DidDeleteFilesNotification.type, ({ files }) =>
      session.hear(() => {
        for (const file of files) session.diagnostics.folderGone(toCoreUri(file.uri));
      }),
    );
    connection.onNotification(DidRenameFilesNotification.type, ({ files }) =>
      session.hear(async () => {
        for (const file of files) session.diagnostics.folderGone(toCoreUri(file.oldUri));
        for (const file of files) await session.diagnostics.folderCame(toCoreUri(file.newUri));
      }),
    );
  },
  async started(connection, session) {
    void session.scanFolders();
    if (!session.hearsOfFiles) return;
    const watchers = WATCHED.map((globPattern) => ({ globPattern }));
    await connection.client.register(DidChangeWatchedFilesNotification.type, { watchers });
  },
};
