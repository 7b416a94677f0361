import { existsSync, readdirSync, statSync } from 'node:fs';
import { dirname, relative, resolve } from 'node:path';
import { documentKindOf } from '../core/syntax/documentKind';
import { documentsBelow, reasonOf, uriOfPath } from '../node/nodeFiles';
import { CommandProblem } from './problem';
import { shown } from './report/text';

/** The documents that the paths of a command name, and the folders that links may not leave. */
export interface FoundDocuments {
  readonly paths: readonly string[];
  readonly roots: readonly string[];
}

/** Folders are walked; a file that is named must be a document. */
export function findDocuments(arguments_: readonly string[]): FoundDocuments {
  const paths = new Set<string>();
  const roots = new Set<string>();
  for (const argument of arguments_) {
    const path = resolve(argument);
    if (isFolder(argument, path)) {
      for (const one of below(argument, path)) paths.add(one);
      roots.add(uriOfPath(rootOf(path)));
    } else {
      if (documentKindOf(path.replaceAll('\\', '/')) === undefined) throw new CommandProblem(notADocument(argument));
      paths.add(path);
      roots.add(uriOfPath(rootOf(dirname(path))));
    }
  }
  if (paths.size === 0)
    throw new CommandProblem(`No documents found in ${arguments_.join(', ')}; they are named ${PATTERNS}`);
  return { paths: [...paths], roots: [...roots] };
}

const PATTERNS = '*.procedure.yaml, *.family.yaml, *.kit.yaml, *.stores.yaml or witnessmark.yaml';

function notADocument(argument: string): string {
  return `${argument} is no document of ours by its name; documents are named ${PATTERNS}`;
}

function isFolder(argument: string, path: string): boolean {
  try {
    return statSync(path).isDirectory();
  } catch (error) {
    throw new CommandProblem(`Cannot read ${argument}: ${reasonOf(error)}`);
  }
}

function below(argument: string, path: string): string[] {
  try {
    readdirSync(path);
  } catch (error) {
    throw new CommandProblem(`Cannot read ${argument}: ${reasonOf(error)}`);
  }
  // What cannot be looked into must not pass for clean.
  return documentsBelow(path, (folder, error) => {
    throw new CommandProblem(`Cannot read ${shown(folder)}: ${reasonOf(error)}`);
  });
}

/**
 * The folder that links stay in: the nearest one above with settings or a repository, else where the command runs if
 * the path lies there, else the folder above.
 */
export function rootOf(folder: string): string {
  for (let current = folder; ; current = dirname(current)) {
    if (existsSync(`${current}/witnessmark.yaml`) || existsSync(`${current}/.git`)) return current;
    if (dirname(current) === current) break;
  }
  const here = process.cwd();
  return relative(here, folder).startsWith('..') ? dirname(folder) : here;
}
