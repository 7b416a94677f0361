import type { Snapshot } from '../../analysis/snapshot';
import type { Uri } from '../../analysis/uri';
import { sha256Hex } from '../../text/sha256';
import type { SheetProof, SourceFile } from '../sheet';
import { type NamedSource, plainText, type ReadFile, sourcesOf } from './sources';
import { TextDigest } from './textDigest';

/**
 * What the sheet of a procedure is made from. The digest is that of a list of the sources, one line each, as the usual
 * programs for checksums write and check it: SHA-256, two spaces, name, line feed.
 */
export function proofOf(snapshot: Snapshot, uri: Uri): SheetProof {
  const builtFrom = sourcesOf(snapshot, uri).map(sourceFile);
  const digest = digestOfFiles(builtFrom);
  return { digest, short: shortDigest(digest), builtFrom };
}

export function digestOfFiles(files: readonly Pick<SourceFile, 'name' | 'sha'>[]): string {
  return sha256Hex(files.map(({ name, sha }) => `${sha}  ${name}\n`).join(''));
}

/** Twelve digits in groups of four: enough that no two texts of a shop share them, few enough to compare by eye. */
export function shortDigest(digest: string): string {
  return [0, 4, 8].map((at) => digest.slice(at, at + 4)).join(' ');
}

function sourceFile({ name, file }: NamedSource): SourceFile {
  const known = knownTexts.get(file) ?? { sha: shaOf(file), text: plainText(file) };
  knownTexts.set(file, known);
  return { name, ...known };
}

/** While one file is being written, the others stay as they are. */
const knownTexts = new WeakMap<ReadFile, Pick<SourceFile, 'sha' | 'text'>>();

/** The documents that are being written, by what they are called. */
const written = new Map<Uri, TextDigest>();
const MOST_WRITTEN = 8;

function shaOf(file: ReadFile): string {
  const text = plainText(file);
  if (file.is !== 'document') return sha256Hex(text);
  const { uri } = file.document;
  const digest = written.get(uri) ?? new TextDigest();
  written.delete(uri);
  written.set(uri, digest);
  const [oldest] = written.keys();
  if (written.size > MOST_WRITTEN && oldest !== undefined) written.delete(oldest);
  return digest.of(text);
}
