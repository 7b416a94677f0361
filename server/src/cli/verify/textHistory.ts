import { dependenciesOf } from '../../core/analysis/dependencies';
import { sha256Hex } from '../../core/text/sha256';
import { uriOfPath } from '../../node/nodeFiles';
import type { DocumentTree } from '../history/documentTree';
import { GitProblem, git } from '../history/git';
import { gitTree } from '../history/gitTree';
import { readProcedure } from './currentText';
import type { SheetIdentity } from './sheetFile';

/** The commit whose text a sheet was printed from. */
export interface PastText {
  readonly is: 'found';
  readonly commit: string;
  /** ISO 8601 calendar date. */
  readonly date: string;
  readonly subject: string;
  readonly revision: string;
}

export type HistoryAnswer =
  | PastText
  | { readonly is: 'absent'; readonly commits: number }
  | { readonly is: 'no-history'; readonly why: string };

/** Only commits that change such a file can change what a sheet is made from. */
const SOURCES = [
  ':(top,glob)**/*.yaml',
  ':(top,glob)**/*.yml',
  ':(top,glob)**/*.svg',
  ':(top,glob)**/*.png',
  ':(top,glob)**/*.jpg',
  ':(top,glob)**/*.jpeg',
];

/** The newest commit, on any branch, whose sources are those of the sheet. Only reads; needs the git program. */
export async function findInHistory(folder: string, sheet: SheetIdentity): Promise<HistoryAnswer> {
  try {
    const repository = git(folder, ['rev-parse', '--show-toplevel'])
      .toString('utf8')
      .replace(/\r?\n$/u, '');
    const commits = commitsOf(repository);
    const search = new Search(repository, sheet);
    for (const [commit = '', date = '', subject = ''] of commits) {
      const revision = await search.revisionAt(commit);
      if (revision !== undefined) return { is: 'found', commit, date, subject, revision };
    }
    return { is: 'absent', commits: commits.length };
  } catch (error) {
    if (!(error instanceof GitProblem)) throw error;
    return { is: 'no-history', why: whyNot(error, folder) };
  }
}

function whyNot(error: GitProblem, folder: string): string {
  if (error.kind === 'no-git') return 'the git program cannot be run';
  return /not a git repository/.test(error.message)
    ? `${folder} is in no git repository`
    : `git says "${error.message}"`;
}

function commitsOf(repository: string): string[][] {
  const format = '--format=%H%x09%cs%x09%s';
  const log = git(repository, ['log', '--all', '--full-history', '--no-show-signature', format, '--', ...SOURCES]);
  return log
    .toString('utf8')
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => line.split('\t'));
}

/** Looks at one commit after the other, and reads only what differs from the one before. */
class Search {
  readonly #root: string;
  readonly #seen = new Set<string>();
  /** The files that each procedure depended on when it was last read. */
  readonly #dependencies = new Map<string, readonly string[]>();
  readonly #texts = new Map<string, string>();

  constructor(
    private readonly repository: string,
    private readonly sheet: SheetIdentity,
  ) {
    this.#root = uriOfPath(repository);
  }

  /** The revision of the procedure there, where the sheet is made from its text. */
  async revisionAt(commit: string): Promise<string | undefined> {
    const tree = gitTree(this.repository, commit, commit);
    for (const name of this.#candidates(tree)) {
      // The same files as in a commit that was looked at before have the same digest.
      if (this.#seen.has(this.#stateOf(tree, name))) continue;
      const read = await readProcedure([this.#root], `${this.#root}/${name}`, this.#filesOf(tree));
      if (read === undefined) continue;
      if (read.document === this.sheet.document && read.proof.digest.startsWith(this.sheet.digest))
        return read.revision;
      const uris = dependenciesOf(read.workspace.snapshot, `${this.#root}/${name}`);
      this.#dependencies.set(
        name,
        [...uris].map((uri) => uri.slice(this.#root.length + 1)),
      );
      this.#seen.add(this.#stateOf(tree, name));
    }
    return undefined;
  }

  /** Procedures that may be the sheet's: with its attached text where there is one, else all that name its number. */
  #candidates(tree: DocumentTree): string[] {
    const names = [...tree.contents.keys()].filter((name) => /\.procedure\.ya?ml$/iu.test(name));
    const wanted = new Set(this.sheet.attached.map(({ sha }) => sha));
    return names.filter((name) => {
      const text = this.#textOf(tree, name);
      if (!text.includes(this.sheet.document)) return false;
      return wanted.size === 0 || wanted.has(sha256Hex(text.replace(/^\uFEFF/u, '').replace(/\r\n?/gu, '\n')));
    });
  }

  #textOf(tree: DocumentTree, name: string): string {
    const content = tree.contents.get(name) ?? '';
    const known = this.#texts.get(content);
    if (known !== undefined) return known;
    const source = tree.read([name]).get(name);
    const text = source?.is === 'text' ? source.text : '';
    this.#texts.set(content, text);
    return text;
  }

  #stateOf(tree: DocumentTree, name: string): string {
    return [name, ...(this.#dependencies.get(name) ?? [])]
      .map((each) => `${each} ${tree.contents.get(each) ?? ''}`)
      .join('\n');
  }

  #filesOf(tree: DocumentTree) {
    return {
      read: async (uri: string) => {
        const name = uri.slice(this.#root.length + 1);
        return tree.read([name]).get(name) ?? ({ is: 'missing' } as const);
      },
    };
  }
}
