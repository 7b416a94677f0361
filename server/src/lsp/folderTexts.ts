import type { Snapshot } from '../core/analysis/snapshot';
import type { Uri } from '../core/analysis/uri';
import { Workspace } from '../core/analysis/workspace';
import type { Session } from './session';
import { goOn, type Waiting } from './waiting';

/** The text of a document, as the client or the disk has it. */
export interface FolderText {
  readonly uri: Uri;
  readonly text: string;
}

/** The texts of all documents that are open or lie in the client's folders, each once. */
export async function* folderTexts(session: Session): AsyncGenerator<FolderText> {
  const seen = new Set<Uri>();
  for (const uri of session.openUris) {
    seen.add(uri);
    yield* textAt(session, uri);
  }
  for (const folder of session.folders) {
    for await (const uri of session.host.documentsBelow(folder)) {
      if (!seen.has(uri)) yield* textAt(session, uri);
      seen.add(uri);
    }
  }
}

async function* textAt(session: Session, uri: Uri): AsyncGenerator<FolderText> {
  const open = session.openDocument(uri);
  const source = open === undefined ? await session.files.read(uri) : { is: 'text' as const, text: open.content.whole };
  if (source.is === 'text') yield { uri, text: source.text };
}

/**
 * A snapshot of every document, open or in the folders, whose text meets a condition, with all that these link to.
 * The session itself lets go of what nothing open depends on; so this is one of its own, for one request.
 */
export async function snapshotOfFolders(
  session: Session,
  uri: Uri,
  isWanted: (text: string) => boolean,
  waiting?: Waiting,
): Promise<Snapshot> {
  const workspace = new Workspace(session.workspace.snapshot.roots);
  await workspace.loadLinked(uri, session.files);
  let seen = 0;
  for await (const one of folderTexts(session)) {
    goOn(waiting, seen++);
    if (!isWanted(one.text)) continue;
    workspace.set(one.uri, { is: 'text', text: one.text });
    await workspace.loadLinked(one.uri, session.files);
  }
  // Somebody may have typed while files were read; from here on nothing waits.
  for (const one of [...workspace.snapshot.uris]) {
    const open = session.openDocument(one);
    if (open !== undefined) workspace.set(one, { is: 'open', content: open.content });
  }
  return workspace.snapshot;
}
