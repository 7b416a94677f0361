import type { SyntaxDocument } from '../syntax/readDocument';
import { type Change, rankOf, type Subject } from './change';
import { documentChanges, subjectOfDocument } from './documentChanges';
import { matchDocuments, renamesIn } from './matchDocuments';
import type { Matched } from './matchSequence';
import { reachOf } from './reach';
import type { FoundChange } from './twoSides';
import { nameIn, type Version } from './version';

/** Everything that differs between two versions. */
export interface Comparison {
  /** The worst first; within a class by document, in the order of its text. */
  readonly changes: readonly Change[];
  /** Documents that are in both versions, by the newer one's URI. */
  readonly pairs: readonly { readonly before: SyntaxDocument; readonly after: SyntaxDocument }[];
}

/** Compares two versions of a folder in the terms of the trade. A version compared with itself has no changes. */
export function compareVersions(before: Version, after: Version): Comparison {
  const { pairs, removed, added } = matchDocuments(before, after);
  const renamed = renamesIn(pairs, before, after);
  const changes: Change[] = [];
  for (const pair of pairs) {
    const found = documentChanges(pair, { before: before.snapshot, after: after.snapshot }, renamed);
    for (const one of [...renaming(pair, before, after), ...found]) changes.push(withReach(one, pair, before, after));
  }
  for (const document of removed) changes.push(wholeDocument(document, 'removed', before));
  for (const document of added) changes.push(wholeDocument(document, 'added', after));
  changes.push(...figureChanges(before, after));
  return { changes: changes.toSorted((a, b) => rankOf(a.class) - rankOf(b.class)), pairs };
}

/** What is gone is met by the older procedures, all else by the newer ones. */
function withReach(found: FoundChange, pair: Matched<SyntaxDocument>, before: Version, after: Version): Change {
  const { where: _where, ...change } = found;
  const old = found.kind === 'removed' && found.after === undefined;
  return { ...change, reached: reachOf(found, (old ? pair.before : pair.after).uri, old ? before : after) };
}

function renaming({ before, after }: Matched<SyntaxDocument>, old: Version, now: Version): FoundChange[] {
  const [from, to] = [nameIn(old, before.uri), nameIn(now, after.uri)];
  if (from === to) return [];
  return [
    {
      class: 'looks',
      kind: 'renamed',
      of: subjectOfDocument(after),
      key: undefined,
      note: undefined,
      builds: '',
      where: undefined,
      before: { uri: before.uri, span: { start: 0, end: 0 }, text: from },
      after: { uri: after.uri, span: { start: 0, end: 0 }, text: to },
    },
  ];
}

/** A whole document that went takes its torques and limits with it, but whoever links to it is told by the checker. */
function wholeDocument(document: SyntaxDocument, kind: 'added' | 'removed', version: Version): Change {
  const side = { uri: document.uri, span: { start: 0, end: 0 }, text: nameIn(version, document.uri) };
  const found: FoundChange = {
    class: 'fits',
    kind,
    of: subjectOfDocument(document),
    key: undefined,
    note: undefined,
    builds: '',
    where: undefined,
    before: kind === 'removed' ? side : undefined,
    after: kind === 'added' ? side : undefined,
  };
  const { where: _where, ...change } = found;
  return { ...change, reached: reachOf(found, document.uri, version) };
}

/** Drawings are compared by their text; what they show, a person must look at. */
function figureChanges(before: Version, after: Version): Change[] {
  return [...after.snapshot.uris].flatMap((uri) => {
    const now = after.snapshot.file(uri);
    const name = nameIn(after, uri);
    const oldUri = `${before.root}/${name}`;
    const old = before.snapshot.file(oldUri);
    if (now?.is !== 'file' || old?.is !== 'file' || now.text === old.text) return [];
    const of: Subject = { kind: 'figure file', id: '', name, step: undefined };
    const side = (sideUri: string) => ({ uri: sideUri, span: { start: 0, end: 0 }, text: name });
    return [
      {
        class: 'fits' as const,
        kind: 'changed' as const,
        of,
        key: undefined,
        note: 'look at the drawing',
        builds: '',
        before: side(oldUri),
        after: side(uri),
        reached: [],
      },
    ];
  });
}
