import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { chooseTrees } from '../../src/cli/history/chooseTrees';
import { reviewTrees } from '../../src/cli/reviewed';
import { Workspace } from '../../src/core/analysis/workspace';
import { checkDocument } from '../../src/core/rules/checkDocument';
import { NodeFiles, uriOfPath } from '../../src/node/nodeFiles';
import { withManyProcedures } from './manyFiles';
import { line } from './measure';
import { TODAY } from './procedures';

const CHANGED = 20;

/**
 * The review of a repository of so many procedures in which 20 files have changed, beside a check of these 20 as they are,
 * in one process each time warm. Wall time, since git is another process.
 */
export async function reviewOfRepository(count: number): Promise<void> {
  await withManyProcedures(count, async (folder) => {
    const git = (...args: string[]) =>
      execFileSync('git', ['-C', folder, '-c', 'user.name=W', '-c', 'user.email=w@example.invalid', ...args], {
        stdio: 'pipe',
      });
    git('init', '-q', '-b', 'main');
    git('add', '-A');
    git('commit', '-q', '-m', 'base');
    const paths = Array.from({ length: CHANGED }, (_, i) =>
      join(folder, 'procedures', `p-${i * Math.floor(count / CHANGED)}.procedure.yaml`),
    );
    for (const path of paths) writeFileSync(path, readFileSync(path, 'utf8').replace('5.1 ± 0.3 N·m', '5.2 ± 0.3 N·m'));
    console.log(`\nreview of a repository of ${count} procedures, ${CHANGED} of them changed; wall time`);
    const [review, check]: [number[], number[]] = [[], []];
    for (let i = 0; i < 4; i++) {
      check.push(await timed(() => checkAll(folder, paths)));
      review.push(await timed(() => reviewTrees(chooseTrees(['HEAD'], folder), TODAY)));
    }
    // The first round warms the compiler.
    line(
      'review, beside a check of the changed ones (aim 2)',
      Math.min(...review.slice(1)),
      Math.min(...check.slice(1)),
    );
    console.log(`memory at most ${(process.resourceUsage().maxRSS / 1024).toFixed(0)} MB`);
  });
}

async function timed(work: () => Promise<unknown>): Promise<number> {
  const began = performance.now();
  await work();
  return performance.now() - began;
}

async function checkAll(folder: string, paths: readonly string[]): Promise<void> {
  const workspace = new Workspace([uriOfPath(folder)]);
  const files = new NodeFiles();
  for (const path of paths) {
    const uri = uriOfPath(path);
    await workspace.loadLinked(uri, files);
    const document = workspace.snapshot.document(uri);
    if (document !== undefined) checkDocument(workspace.snapshot, document, { today: TODAY });
  }
}
