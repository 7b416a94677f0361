import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The repository's root, absolute. */
export const repoRoot = resolve(dirname(fileURLToPath(import.meta.url)), '../..');

/** An absolute path from one that is relative to the root. */
export function repoPath(path: string): string {
  return join(repoRoot, path);
}

/** The files that are, or are about to be, under version control, relative to the root; ignored ones are left out. */
export function repoFiles(): string[] {
  const list = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: repoRoot,
    encoding: 'utf8',
  });
  return list.split('\0').filter((path) => path !== '' && existsSync(repoPath(path)));
}
