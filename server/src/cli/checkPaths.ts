import { accessSync, constants } from 'node:fs';
import type { Finding } from '../core/rules/finding';
import { LineIndex } from '../core/text/lineIndex';
import { pathOfUri, readText, reasonOf, uriOfPath } from '../node/nodeFiles';
import type { CheckedFile } from './checking/checkOne';
import { CheckThreads, threadsFor } from './checking/checkThreads';
import { FileDigests } from './checking/fileDigests';
import { type PlainResult, type ToldResult, toldResult } from './checking/plainResult';
import { cacheFolder, ResultCache } from './checking/resultCache';
import type { FoundDocuments } from './findDocuments';
import { CommandProblem } from './problem';
import { bundledChecker, programDigest } from './program';

/** What checking one document gave; its text is kept only as long as a report needs it. */
export interface CheckedDocument {
  readonly path: string;
  readonly uri: string;
  readonly lines: LineIndex;
  readonly result: ToldResult;
  /** Lines of another document that a finding points to; undefined where it cannot be read. */
  linesOf(uri: string): LineIndex | undefined;
}

/** How documents are checked: `remember` takes over what an earlier run found in the very same files. */
export interface CheckingOptions {
  readonly today: string;
  readonly remember?: boolean;
}

/** Checks documents in the order of their paths; many at once where there are many, and only what has changed. */
export async function* checkPaths(found: FoundDocuments, options: CheckingOptions): AsyncGenerator<CheckedDocument> {
  for (const path of found.paths) assertReadable(path);
  const digests = new FileDigests();
  const cache = cacheFor(found, options, digests);
  const known = new Map<string, PlainResult>();
  for (const path of cache === undefined ? [] : found.paths) {
    const result = cache?.find(uriOfPath(path));
    if (result !== undefined) known.set(path, result);
  }
  const unknown = found.paths.filter((path) => !known.has(path));
  const checked = checkedFiles(unknown, found.roots, options.today);
  try {
    for (const path of found.paths) {
      const uri = uriOfPath(path);
      const result = known.get(path) ?? (await nextOf(checked, cache, uri));
      yield told(path, uri, result);
    }
  } finally {
    await checked.return(undefined);
    cache?.save();
  }
}

async function nextOf(
  checked: AsyncGenerator<CheckedFile>,
  cache: ResultCache | undefined,
  uri: string,
): Promise<PlainResult> {
  const { value } = (await checked.next()) as { value: CheckedFile };
  cache?.keep(uri, value);
  return value.result;
}

async function* checkedFiles(
  paths: readonly string[],
  roots: readonly string[],
  today: string,
): AsyncGenerator<CheckedFile> {
  if (paths.length === 0) return;
  const program = bundledChecker();
  const count = program === undefined ? 0 : threadsFor(paths.length);
  // The threads are started first, so that they load the program while this one does.
  const threads =
    program === undefined || count < 1
      ? undefined
      : new CheckThreads(program, count, { witnessmark: 'check', roots, today });
  const { FileChecker } = await import('./checking/checker');
  const checker = new FileChecker(roots, today);
  if (threads !== undefined) yield* threads.check(paths, checker);
  else for (const path of paths) yield await checker.check(path);
}

/** Only the bundled program, whose bytes say what it is, remembers anything. */
function cacheFor(
  { roots }: FoundDocuments,
  { remember, today }: CheckingOptions,
  digests: FileDigests,
): ResultCache | undefined {
  const program = remember === true ? programDigest() : undefined;
  if (program === undefined) return undefined;
  return new ResultCache(cacheFolder(), [program, today, ...[...roots].sort()], digests);
}

function told(path: string, uri: string, result: PlainResult): CheckedDocument {
  let lines: LineIndex | undefined;
  return {
    path,
    uri,
    // A clean document's text need not be looked at again.
    get lines() {
      lines ??= linesAt(uri) ?? new LineIndex('');
      return lines;
    },
    result: toldResult(result),
    linesOf: linesAt,
  };
}

function linesAt(uri: string): LineIndex | undefined {
  const source = readText(pathOfUri(uri));
  return source.is === 'text' ? new LineIndex(source.text) : undefined;
}

/** Says in one line why a file cannot be read, if so. */
export function assertReadable(path: string): void {
  try {
    accessSync(path, constants.R_OK);
  } catch (error) {
    throw new CommandProblem(`Cannot read ${path}: ${reasonOf(error)}`);
  }
}

const RANK = { error: 3, warning: 2, info: 1 } as const;
export type AtLeast = keyof typeof RANK;

export function isAtLeast(finding: Finding, severity: AtLeast): boolean {
  return RANK[finding.severity] >= RANK[severity];
}
