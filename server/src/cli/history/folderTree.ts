import { createHash } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import type { SourceText } from '../../core/analysis/workspace';
import { readText, reasonOf, uriOfPath } from '../../node/nodeFiles';
import { CommandProblem } from '../problem';
import { type DocumentTree, takesPart } from './documentTree';

/** The documents of a folder as they are on disk. Their contents are named as git names them, so that both can be compared. */
export function folderTree(folder: string, label: string): DocumentTree {
  const root = resolve(folder);
  const contents = new Map<string, string>();
  const texts = new Map<string, SourceText>();
  for (const path of filesBelow(root)) {
    const name = relative(root, path).replaceAll('\\', '/');
    if (!takesPart(name)) continue;
    const source = readText(path);
    texts.set(name, source);
    contents.set(name, source.is === 'text' ? blobName(source.text) : `unreadable ${name}`);
  }
  const read = (names: readonly string[]) =>
    new Map(names.map((name) => [name, texts.get(name) ?? ({ is: 'missing' } as const)]));
  return { label, root: uriOfPath(root), contents, read };
}

/** The name of a blob in git; line ends are as git keeps them, so that a checkout with CR LF is no other text. */
export function blobName(text: string): string {
  const bytes = Buffer.from(text.replaceAll('\r\n', '\n'), 'utf8');
  return createHash('sha1').update(`blob ${bytes.length}\0`).update(bytes).digest('hex');
}

function* filesBelow(folder: string): Generator<string> {
  for (const entry of entriesOf(folder)) {
    if (entry.name.startsWith('.') || entry.name === 'node_modules') continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* filesBelow(path);
    else if (entry.isFile()) yield path;
  }
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true });
  } catch (error) {
    throw new CommandProblem(`Cannot read ${folder}: ${reasonOf(error)}`);
  }
}
