import { statSync } from 'node:fs';
import { basename, dirname, join, resolve } from 'node:path';
import { reasonOf } from '../../node/nodeFiles';
import { CommandProblem } from '../problem';
import { shown } from '../report/text';
import type { SheetRequest } from './sheetRequest';

/** Whether what is asked for may be more than one file, so that `--out` names a folder. */
export function wantsFolder(
  { allBuilds, files }: Pick<SheetRequest, 'allBuilds' | 'files'>,
  found: readonly string[],
): boolean {
  return allBuilds || files.length > 1 || found.length > 1;
}

/** Refuses, before anything is printed, a place that sheets cannot be written to. */
export function checkTarget({ out }: SheetRequest, isFolder: boolean): void {
  if (out === undefined) return;
  if (isFolder) {
    if (/\.(?:pdf|html?)$/i.test(out) && !isFolderThere(out))
      throw new CommandProblem(`Several sheets go to a folder; --out ${out} names one file`);
    assertFolder(out);
    return;
  }
  if (isFolderThere(out)) return;
  if (!/\.(?:pdf|html?)$/i.test(out))
    throw new CommandProblem(`--out takes a file that ends in .pdf or .html, or a folder that exists, not "${out}"`);
  assertFolder(dirname(resolve(out)));
}

/** The file that the sheet of a build goes to. */
export function targetFor(request: SheetRequest, file: string, build: string, isFolder: boolean): string {
  const { out, fillable } = request;
  const name = `${basename(file).replace(/\.procedure\.ya?ml$/, '')}-${build.replaceAll(',', '-')}${fillable ? '-fillable' : ''}.pdf`;
  if (out === undefined) return resolve(name);
  return isFolder || isFolderThere(out) ? join(resolve(out), name) : resolve(out);
}

function assertFolder(folder: string): void {
  if (isFolderThere(folder)) return;
  throw new CommandProblem(`There is no folder ${shown(resolve(folder))}; make it first`);
}

function isFolderThere(path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    const reason = reasonOf(error);
    if (reason === 'permission denied') throw new CommandProblem(`Cannot write to ${shown(resolve(path))}: ${reason}`);
    return false;
  }
}
