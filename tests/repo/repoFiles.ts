import { execFileSync } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

const notOurs = ['node_modules', 'dist', '.cache', '.git'];

/** The repository's root, absolute. */
export const repoRoot = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** An absolute path from one that is relative to the root. */
export function repoPath(path: string): string {
  return join(repoRoot, path);
}

/** Every file of the tree, relative to the root and sorted, without what is installed, built or kept by git. */
export function repoFiles(folder = ''): string[] {
  const entries = readdirSync(repoPath(folder), { withFileTypes: true });
  const found = entries.flatMap((entry) => {
    const path = folder === '' ? entry.name : `${folder}/${entry.name}`;
    if (entry.isDirectory()) return notOurs.includes(entry.name) ? [] : repoFiles(path);
    return [path];
  });
  return found.sort();
}

/** The files under version control, relative to the root; undefined where this is not a clone. */
export function versionedFiles(): string[] | undefined {
  if (!existsSync(repoPath('.git'))) return undefined;
  const list = execFileSync('git', ['ls-files', '-z'], { cwd: repoRoot, encoding: 'utf8' });
  return list.split('\0').filter((path) => path !== '');
}
