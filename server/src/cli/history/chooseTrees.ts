import { statSync } from 'node:fs';
import { CommandProblem } from '../problem';
import type { DocumentTree } from './documentTree';
import { folderTree } from './folderTree';
import { commitOf, mergeBaseOf, repositoryOf } from './git';
import { gitTree } from './gitTree';
import { workTree } from './workTree';

export interface ChosenTrees {
  readonly before: DocumentTree;
  readonly after: DocumentTree;
}

/**
 * The two versions that a command line names: two folders; or revisions of the repository that holds a folder, of which
 * the second is the working tree where none is named. `A..B` is `A B`; `A...B` compares B with what it began from.
 */
export function chooseTrees(names: readonly string[], here: string): ChosenTrees {
  const [first, second, ...more] = names.flatMap(splitRange);
  if (first === undefined) throw new CommandProblem('Say what to compare with: a revision of git, or two folders');
  if (more.length > 0) throw new CommandProblem('Only two versions can be compared');
  if (second !== undefined && isFolder(first) && isFolder(second))
    return { before: folderTree(first, first), after: folderTree(second, second) };
  const repository = repositoryOf(here);
  const base = commitOf(repository, first.replace(/^\.\.\./u, ''));
  if (second === undefined) {
    const before = gitTree(repository, base, first);
    return { before, after: workTree(repository, before, base) };
  }
  const [head, sinceBegun] = second.startsWith('...') ? [second.slice(3), true] : [second, false];
  const commit = commitOf(repository, head === '' ? 'HEAD' : head);
  const from = sinceBegun ? mergeBaseOf(repository, base, commit) : base;
  return { before: gitTree(repository, from, first), after: gitTree(repository, commit, head || 'HEAD') };
}

function splitRange(name: string): string[] {
  const [, from, dots, to] = /^(.+?)(\.{2,3})([^.].*|)$/su.exec(name) ?? [];
  if (from === undefined || from === '.' || from.endsWith('/') || from.endsWith('.')) return [name];
  return [from, dots === '...' ? `...${to}` : to || 'HEAD'];
}

export function isFolder(name: string): boolean {
  try {
    return statSync(name).isDirectory();
  } catch {
    return false;
  }
}
