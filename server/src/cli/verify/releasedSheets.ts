import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { reasonOf } from '../../node/nodeFiles';
import { CommandProblem } from '../problem';
import { readSheetFile, type SheetIdentity } from './sheetFile';

export interface ReleasedSheet {
  readonly path: string;
  readonly sheet: SheetIdentity;
}

export interface ReleasedAnswer {
  /** Those of the same document, newest first. */
  readonly ofDocument: readonly ReleasedSheet[];
  /** Of them the one that is made from the same sources. */
  readonly same: ReleasedSheet | undefined;
  /** Whether none of a later revision lies beside it. */
  readonly isNewest: boolean;
}

/** Looks a sheet up among the printed sheets of a folder and those below it; files that are no sheets are passed over. */
export async function findReleased(folder: string, sheet: SheetIdentity): Promise<ReleasedAnswer> {
  const ofDocument: ReleasedSheet[] = [];
  for (const path of pdfsBelow(folder)) {
    const read = await readSheetFile(path);
    if (read.is === 'sheet' && read.sheet.document === sheet.document) ofDocument.push({ path, sheet: read.sheet });
  }
  const newestFirst = ofDocument.sort((one, other) => ((one.sheet.date ?? '') < (other.sheet.date ?? '') ? 1 : -1));
  const same = newestFirst.find((one) => one.sheet.digest.startsWith(sheet.digest));
  const isNewest = same !== undefined && (same.sheet.date ?? '') >= (newestFirst[0]?.sheet.date ?? '');
  return { ofDocument: newestFirst, same, isNewest };
}

function pdfsBelow(folder: string): string[] {
  try {
    const entries = readdirSync(folder, { withFileTypes: true, recursive: true });
    const pdfs = entries.filter((entry) => entry.isFile() && /\.pdf$/iu.test(entry.name));
    return pdfs.map((entry) => join(entry.parentPath ?? entry.path, entry.name)).sort();
  } catch (error) {
    throw new CommandProblem(`Cannot read ${folder}: ${reasonOf(error)}`);
  }
}
