import { join } from 'node:path';
import type { SourceText } from '../../core/analysis/workspace';
import { readText, uriOfPath } from '../../node/nodeFiles';
import { type DocumentTree, takesPart } from './documentTree';
import { blobName } from './folderTree';
import { git } from './git';

/**
 * The documents of a repository as they are on disk. Git itself says which differ from a commit, for it knows without
 * reading them again; what it ignores takes no part.
 */
export function workTree(repository: string, base: DocumentTree, commit: string): DocumentTree {
  const contents = new Map(base.contents);
  const texts = new Map<string, SourceText>();
  const read = (name: string): SourceText => {
    const source = texts.get(name) ?? readText(join(repository, name));
    texts.set(name, source);
    return source;
  };
  for (const name of touched(repository, commit)) {
    const source = read(name);
    if (source.is === 'missing') contents.delete(name);
    else contents.set(name, source.is === 'text' ? blobName(source.text) : `unreadable ${name}`);
  }
  return {
    label: 'the working tree',
    root: uriOfPath(repository),
    contents,
    read: (names) => new Map(names.map((name) => [name, read(name)])),
  };
}

/** Files that differ from the commit, are gone, or are new and not ignored. */
function touched(repository: string, commit: string): string[] {
  const differing = ['diff', '--name-only', '-z', '--no-renames', '--no-ext-diff', '--no-textconv', commit];
  const untracked = ['ls-files', '-z', '--others', '--exclude-standard', '--full-name'];
  const names = [differing, untracked].flatMap((args) => git(repository, args).toString('utf8').split('\0'));
  return names.filter((name) => name !== '' && takesPart(name));
}
