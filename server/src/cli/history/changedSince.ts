import { relative } from 'node:path';
import { pathOfUri } from '../../node/nodeFiles';
import type { FoundDocuments } from '../findDocuments';
import { CommandProblem } from '../problem';
import { commitOf, repositoryOf } from './git';
import { gitTree } from './gitTree';
import { dependentsOf, readTexts } from './loadVersions';
import { workTree } from './workTree';

/** Of some documents those in which a difference from a revision can change what is found. */
export function changedSince(found: FoundDocuments, revision: string): FoundDocuments {
  const [root] = found.roots;
  if (root === undefined) return found;
  const repository = repositoryOf(pathOfUri(root));
  if (found.roots.some((one) => repositoryOf(pathOfUri(one)) !== repository))
    throw new CommandProblem('--changed-since takes documents of one repository');
  const commit = commitOf(repository, revision);
  const before = gitTree(repository, commit, revision);
  const after = workTree(repository, before, commit);
  const names = [...new Set([...before.contents.keys(), ...after.contents.keys()])];
  const changed = names.filter((name) => before.contents.get(name) !== after.contents.get(name));
  const reached = dependentsOf(changed, readTexts(after, after.contents.keys()));
  const paths = found.paths.filter((path) => reached.has(relative(repository, path).replaceAll('\\', '/')));
  return { ...found, paths };
}
