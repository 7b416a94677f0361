import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { readdir } from 'node:fs/promises';
import { dirname, join, resolve } from 'node:path';
import type { FileSource, SourceText } from '../core/analysis/workspace';
import { documentKindOf } from '../core/syntax/documentKind';

/** A document larger than this is no document, and reading it would only stall the editor. */
const LARGEST = 8 * 1024 * 1024;

/** The core's plain URI of a path: a scheme and forward slashes, not percent-encoded. */
export function uriOfPath(path: string): string {
  const absolute = resolve(path).replaceAll('\\', '/');
  return absolute.startsWith('/') ? `file://${absolute}` : `file:///${absolute}`;
}

export function pathOfUri(uri: string): string {
  const path = uri.replace(/^file:\/\//, '');
  return /^\/[A-Za-z]:\//.test(path) ? path.slice(1) : path;
}

/** Files on disk, as the core looks at them. */
export class NodeFiles implements FileSource {
  async read(uri: string): Promise<SourceText> {
    if (!uri.startsWith('file:')) return { is: 'unreadable', reason: 'it is not on disk' };
    return readText(pathOfUri(uri));
  }
}

export function readText(path: string): SourceText {
  const source = readBytes(path);
  return source.is === 'bytes' ? { is: 'text', text: source.bytes.toString('utf8') } : source;
}

type Unread = Exclude<SourceText, { readonly is: 'text' }>;

/** What a document's file holds, for whoever only wants to know whether it is the same as before. */
export function readBytes(path: string): { readonly is: 'bytes'; readonly bytes: Buffer } | Unread {
  try {
    const stats = statSync(path);
    if (!stats.isFile()) return { is: 'unreadable', reason: 'it is not a file' };
    if (stats.size > LARGEST) return { is: 'unreadable', reason: 'it is larger than 8 MB' };
    return { is: 'bytes', bytes: readFileSync(path) };
  } catch (error) {
    return failureOf(error);
  }
}

function failureOf(error: unknown): Unread {
  const code = errorCode(error);
  if (code === 'ENOENT' || code === 'ENOTDIR') return { is: 'missing' };
  return { is: 'unreadable', reason: reasonOf(error) };
}

function errorCode(error: unknown): string | undefined {
  return typeof error === 'object' && error !== null && 'code' in error ? String(error.code) : undefined;
}

const REASONS: Readonly<Record<string, string>> = {
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EISDIR: 'it is a folder',
  ENOENT: 'there is no such file or folder',
  ENOTDIR: 'a part of the path is no folder',
  EROFS: 'the disk is read-only',
  ENOSPC: 'the disk is full',
  ENAMETOOLONG: 'the name is too long',
  EMFILE: 'too many files are open',
  ELOOP: 'the links lead in a circle',
};

/** Why the file system refused, in words. */
export function reasonOf(error: unknown): string {
  const code = errorCode(error);
  return (code === undefined ? undefined : REASONS[code]) ?? (error instanceof Error ? error.message : String(error));
}

/**
 * All documents below a folder, sorted; hidden folders, installed packages and links are passed over. A folder below it
 * that may not be opened is handed to `unreadable`.
 */
export function documentsBelow(
  folder: string,
  unreadable: (path: string, error: unknown) => void = () => {},
): string[] {
  const found: string[] = [];
  const visit = (current: string): void => {
    for (const entry of readdirSync(current, { withFileTypes: true }).sort((a, b) => (a.name < b.name ? -1 : 1))) {
      if (isPassedOver(entry.name)) continue;
      const path = join(current, entry.name);
      if (entry.isDirectory()) visitSafely(path);
      else if (entry.isFile() && isDocument(path)) found.push(path);
    }
  };
  const visitSafely = (path: string): void => {
    try {
      visit(path);
    } catch (error) {
      unreadable(path, error);
    }
  };
  visit(folder);
  return found;
}

/** The same one after another and without holding anybody up, for a server that has other things to do. */
export async function* walkDocuments(folder: string): AsyncGenerator<string> {
  const entries = await readdir(folder, { withFileTypes: true }).catch(() => []);
  for (const entry of entries.sort((a, b) => (a.name < b.name ? -1 : 1))) {
    if (isPassedOver(entry.name)) continue;
    const path = join(folder, entry.name);
    if (entry.isDirectory()) yield* walkDocuments(path);
    else if (entry.isFile() && isDocument(path)) yield path;
  }
}

function isPassedOver(name: string): boolean {
  return name.startsWith('.') || name === 'node_modules';
}

function isDocument(path: string): boolean {
  return documentKindOf(path.replaceAll('\\', '/')) !== undefined;
}

/** Writes a file whole or not at all: beside its place first, and then by one rename. */
export function writeWhole(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const draft = join(dirname(path), `.${process.pid}-${Date.now().toString(36)}.part`);
  try {
    writeFileSync(draft, content);
    renameSync(draft, path);
  } catch (error) {
    rmSync(draft, { force: true });
    throw error;
  }
}
