import { documentValue } from '../core/analysis/documentUnit';
import type { Snapshot } from '../core/analysis/snapshot';
import { fileNameOf, type Uri } from '../core/analysis/uri';
import { type IdTarget, idOfTarget } from '../core/ide/idTarget';
import { idUsesIn } from '../core/ide/idUses';
import { snapshotOfFolders } from './folderTexts';
import type { Session } from './session';
import type { Waiting } from './waiting';

/**
 * A snapshot with every document that can name one of the targets, or that has one of the other words in it. Only these
 * are read whole; of all others the text alone is looked at.
 */
export async function namingSnapshot(
  session: Session,
  uri: Uri,
  targets: readonly IdTarget[],
  others: readonly string[] = [],
  waiting?: Waiting,
): Promise<Snapshot> {
  const words = [...others, ...targets.map(wordOf)];
  const having = (some: readonly string[]) => (text: string) => some.some((word) => text.includes(word));
  const snapshot = await snapshotOfFolders(session, uri, having(words), waiting);
  const stores = targets.flatMap((target) => storesOf(snapshot, target) ?? []);
  return stores.length === 0 ? snapshot : snapshotOfFolders(session, uri, having([...words, ...stores]), waiting);
}

function wordOf(target: IdTarget): string {
  return idOfTarget(target) ?? fileNameOf(target.is === 'file' ? target.uri : '');
}

/**
 * The file of a tool or consumable that a family mentions. Then all who link to that file have to be read, since they
 * alone tell which tool the family means.
 */
function storesOf(snapshot: Snapshot, target: IdTarget): string | undefined {
  if (target.is !== 'thing' || target.thing.document.kind !== 'stores') return undefined;
  const { id, document } = target.thing;
  const isMentioned = [...snapshot.uris].some((uri) => {
    const one = snapshot.document(uri);
    return one !== undefined && documentValue(one, 'family') !== undefined && idUsesIn(one).has(id);
  });
  return isMentioned ? fileNameOf(document.uri) : undefined;
}
