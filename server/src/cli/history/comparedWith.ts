import { realpathSync } from 'node:fs';
import { dirname, relative } from 'node:path';
import { stepsChanged } from '../../core/review/changedSteps';
import { compareVersions } from '../../core/review/compareVersions';
import type { ChangedSince } from '../../core/sheet/build/buildContext';
import { uriOfPath } from '../../node/nodeFiles';
import { CommandProblem } from '../problem';
import { commitOf, repositoryOf } from './git';
import { gitTree } from './gitTree';
import { loadVersions } from './loadVersions';
import { workTree } from './workTree';

/** For each build of a procedure the steps that differ from a revision of git; called by the build's id. */
export type ComparedWith = (build: string) => ChangedSince;

/** Compares a procedure as it is on disk, with all that it links to, with how it was. */
export async function comparedWith(file: string, revision: string): Promise<ComparedWith> {
  const path = realpathSync(file);
  const repository = repositoryOf(dirname(path));
  const commit = commitOf(repository, revision);
  const before = gitTree(repository, commit, revision);
  const loaded = await loadVersions(before, workTree(repository, before, commit));
  const comparison = compareVersions(loaded.before, loaded.after);
  const uri = uriOfPath(path);
  const isOld = before.contents.has(relative(repository, path).replaceAll('\\', '/'));
  return (build) => {
    const changed = stepsChanged(comparison, uri, build);
    if (changed === undefined && !isOld)
      throw new CommandProblem(`${file} is not in ${revision}, nor under another name`);
    if (changed === undefined) return { since: { kind: 'text', name: revision }, steps: new Set(), gone: [] };
    const since =
      changed.revision === undefined
        ? ({ kind: 'text', name: revision } as const)
        : ({ kind: 'revision', name: changed.revision } as const);
    return { since, steps: changed.steps, gone: changed.gone };
  };
}
