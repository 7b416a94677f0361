import { spawnSync } from 'node:child_process';
import { CommandProblem } from '../problem';

/** Output larger than this is not of documents. */
const LARGEST_OUTPUT = 1024 * 1024 * 1024;

/**
 * Runs the git program on a repository, read-only: no lock is taken, no hook and no monitor is run, nobody is asked for a
 * password. Whatever a user typed is handed over behind `--end-of-options` by the caller, so that it cannot be an option.
 */
export function git(folder: string, args: readonly string[], input?: string): Buffer {
  const { stdout, stderr, status, error } = spawnSync(
    'git',
    ['-c', 'core.fsmonitor=false', '-c', 'core.quotePath=false', '-C', folder, ...args],
    {
      input,
      maxBuffer: LARGEST_OUTPUT,
      env: { ...process.env, GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', LC_ALL: 'C' },
      windowsHide: true,
    },
  );
  if (error !== undefined) throw new GitProblem('no-git', error.message);
  if (status !== 0) throw new GitProblem('failed', stderr.toString('utf8').trim().split('\n')[0] ?? '');
  return stdout;
}

/** What git refused. */
export class GitProblem extends Error {
  constructor(
    readonly kind: 'no-git' | 'failed',
    message: string,
  ) {
    super(message);
  }
}

/** The top folder of the repository that holds a folder. */
export function repositoryOf(folder: string): string {
  try {
    return git(folder, ['rev-parse', '--show-toplevel'])
      .toString('utf8')
      .replace(/\r?\n$/u, '');
  } catch (error) {
    if (!(error instanceof GitProblem)) throw error;
    if (error.kind === 'no-git')
      throw new CommandProblem('The git program cannot be run; install it, or give two folders to compare');
    if (/dubious ownership/.test(error.message))
      throw new CommandProblem(`git does not trust this folder: ${error.message}`);
    throw new CommandProblem(`${folder} is in no git repository; give two folders to compare`);
  }
}

/** The commit that a revision names. */
export function commitOf(repository: string, revision: string): string {
  if (revision === '' || revision.startsWith('-'))
    throw new CommandProblem(`"${revision}" is no revision of git; name a branch, a tag or a commit`);
  try {
    return git(repository, ['rev-parse', '--verify', '--quiet', '--end-of-options', `${revision}^{commit}`])
      .toString('utf8')
      .trim();
  } catch (error) {
    if (!(error instanceof GitProblem)) throw error;
    const shallow = isShallow(repository) ? '; this clone is shallow, get more of it with git fetch --unshallow' : '';
    throw new CommandProblem(`There is no revision "${revision}" in ${repository}${shallow}`);
  }
}

/** The newest commit that two have in common. */
export function mergeBaseOf(repository: string, first: string, second: string): string {
  try {
    return git(repository, ['merge-base', '--end-of-options', first, second]).toString('utf8').trim();
  } catch (error) {
    if (!(error instanceof GitProblem)) throw error;
    const shallow = isShallow(repository)
      ? ', as this clone is shallow; get more of it with git fetch --unshallow'
      : '';
    throw new CommandProblem(`The two revisions have no commit in common${shallow}`);
  }
}

function isShallow(repository: string): boolean {
  return git(repository, ['rev-parse', '--is-shallow-repository']).toString('utf8').trim() === 'true';
}
