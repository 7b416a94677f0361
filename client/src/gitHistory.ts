import * as vscode from 'vscode';

/** What is used of the editor's own Git extension; its interface is public and versioned. */
interface GitExtension {
  getAPI(version: 1): GitApi;
}

interface GitApi {
  getRepository(uri: vscode.Uri): GitRepository | null;
  toGitUri(uri: vscode.Uri, ref: string): vscode.Uri;
}

interface GitRepository {
  log(options: { maxEntries: number; path?: string }): Promise<readonly Commit[]>;
  getRefs?(query: object): Promise<readonly { readonly name?: string; readonly commit?: string }[]>;
  show(ref: string, path: string): Promise<string>;
}

interface Commit {
  readonly hash: string;
  readonly message: string;
  readonly authorDate?: Date;
}

/** An earlier state of a repository. */
export interface Earlier {
  readonly ref: string;
  /** What a person calls it. */
  readonly label: string;
}

/** The history of the repository that holds a file, as the editor knows it; undefined where it is in none. */
export class GitHistory {
  readonly #api: GitApi;
  readonly #repository: GitRepository;

  private constructor(api: GitApi, repository: GitRepository) {
    this.#api = api;
    this.#repository = repository;
  }

  static async of(uri: vscode.Uri): Promise<GitHistory | undefined> {
    const extension = vscode.extensions.getExtension<GitExtension>('vscode.git');
    const api = (await extension?.activate().then(undefined, () => undefined))?.getAPI(1);
    const repository = api?.getRepository(uri);
    return api === undefined || repository === undefined || repository === null
      ? undefined
      : new GitHistory(api, repository);
  }

  /** The commits that touched a file and the names that point to commits, the newest first. */
  async choices(uri: vscode.Uri): Promise<readonly (Earlier & { readonly detail: string })[]> {
    const commits = await this.#repository.log({ maxEntries: 60, path: uri.fsPath });
    const refs = (await this.#repository.getRefs?.({}).catch(() => [])) ?? [];
    const names = refs.flatMap(({ name }) => (name === undefined ? [] : [{ ref: name, label: name, detail: '' }]));
    const subjects = commits.map(({ hash, message, authorDate }) => ({
      ref: hash,
      label: `${hash.slice(0, 8)} ${message.split('\n')[0] ?? ''}`,
      detail: authorDate?.toISOString().slice(0, 10) ?? '',
    }));
    return [...subjects, ...names];
  }

  /** A file as it was; undefined where it was not there. */
  async text(uri: vscode.Uri, ref: string): Promise<string | undefined> {
    try {
      return await this.#repository.show(ref, uri.fsPath);
    } catch {
      return undefined;
    }
  }

  /** Under this URI the editor shows the file as it was. */
  uriOf(uri: vscode.Uri, ref: string): vscode.Uri {
    return this.#api.toGitUri(uri, ref);
  }
}
