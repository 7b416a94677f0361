import type { SourceText } from '../../core/analysis/workspace';
import { uriOfPath } from '../../node/nodeFiles';
import { type DocumentTree, takesPart } from './documentTree';
import { git } from './git';

/** As for a file on disk. */
const LARGEST = 8 * 1024 * 1024;
const REGULAR = /^100(?:644|755)$/;

interface Blob {
  readonly oid: string;
  readonly size: number;
}

/** The documents of a commit, read from git's own store; nothing is checked out. Submodules and links are passed over. */
export function gitTree(repository: string, commit: string, label: string): DocumentTree {
  const blobs = new Map<string, Blob>();
  for (const entry of git(repository, ['ls-tree', '-r', '-z', '-l', '--full-tree', commit])
    .toString('utf8')
    .split('\0')) {
    const [, mode = '', type, oid = '', size = '', name = ''] =
      /^(\d+) (\w+) (\w+) +(\S+)\t([\s\S]+)$/.exec(entry) ?? [];
    if (type === 'blob' && REGULAR.test(mode) && takesPart(name)) blobs.set(name, { oid, size: Number(size) });
  }
  return {
    label,
    root: uriOfPath(repository),
    contents: new Map([...blobs].map(([name, { oid }]) => [name, oid])),
    read: (names) => readBlobs(repository, blobs, names),
  };
}

function readBlobs(
  repository: string,
  blobs: ReadonlyMap<string, Blob>,
  names: readonly string[],
): Map<string, SourceText> {
  const texts = new Map<string, SourceText>();
  const wanted: [string, Blob][] = [];
  for (const name of names) {
    const blob = blobs.get(name);
    if (blob === undefined) texts.set(name, { is: 'missing' });
    else if (blob.size > LARGEST) texts.set(name, { is: 'unreadable', reason: 'it is larger than 8 MB' });
    else wanted.push([name, blob]);
  }
  if (wanted.length === 0) return texts;
  const output = git(repository, ['cat-file', '--batch'], wanted.map(([, { oid }]) => `${oid}\n`).join(''));
  let at = 0;
  for (const [name] of wanted) {
    const end = output.indexOf(0x0a, at);
    const size = Number(output.toString('latin1', at, end).split(' ')[2]);
    texts.set(name, { is: 'text', text: output.toString('utf8', end + 1, end + 1 + size) });
    at = end + 1 + size + 1;
  }
  return texts;
}
