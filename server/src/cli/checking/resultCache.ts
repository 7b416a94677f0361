import { readFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { writeWhole } from '../../node/nodeFiles';
import type { CheckedFile } from './checkOne';
import { digestOf, type FileDigests } from './fileDigests';
import type { PlainResult } from './plainResult';

/** More than this is no folder of procedures, and reading it all would cost more than it saves. */
const MOST = 20_000;

/**
 * What earlier runs found, by what the files hold and never by their times: the result of a document counts only while
 * the document, every file that it depends on (also those that do not exist), the folders, the day and this program are
 * the same. A cache that cannot be read or written is done without.
 */
export class ResultCache {
  readonly #path: string;
  readonly #digests: FileDigests;
  readonly #entries: Map<string, CheckedFile>;
  #changed = false;

  /** `ground` is all that a result depends on beside files: program, day and folders. */
  constructor(folder: string, ground: readonly string[], digests: FileDigests) {
    this.#path = join(
      folder,
      `checked-${digestOf(ground.join('\n'))
        .replaceAll(/[^A-Za-z0-9]/g, '')
        .slice(0, 32)}.json`,
    );
    this.#digests = digests;
    this.#entries = readEntries(this.#path);
  }

  find(uri: string): PlainResult | undefined {
    const entry = this.#entries.get(uri);
    if (entry === undefined || entry.digest !== this.#digests.of(uri)) return undefined;
    return entry.dependencies.every(([one, digest]) => this.#digests.of(one) === digest) ? entry.result : undefined;
  }

  keep(uri: string, file: CheckedFile): void {
    // Set anew and not changed, so that what is used last is dropped last.
    this.#entries.delete(uri);
    this.#entries.set(uri, file);
    this.#changed = true;
  }

  save(): void {
    if (!this.#changed) return;
    try {
      writeWhole(this.#path, JSON.stringify([...this.#entries].slice(-MOST)));
    } catch {
      // The next run checks again.
    }
  }
}

function readEntries(path: string): Map<string, CheckedFile> {
  try {
    return new Map(JSON.parse(readFileSync(path, 'utf8')) as [string, CheckedFile][]);
  } catch {
    return new Map();
  }
}

/** Where programs keep what they can do without, as each platform has it. */
export function cacheFolder(): string {
  const { env, platform } = process;
  if (platform === 'win32')
    return join(env.LOCALAPPDATA ?? join(homedir(), 'AppData', 'Local'), 'witnessmark', 'cache');
  if (platform === 'darwin') return join(homedir(), 'Library', 'Caches', 'witnessmark');
  return join(env.XDG_CACHE_HOME ?? join(homedir(), '.cache'), 'witnessmark');
}
