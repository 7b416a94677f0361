import { type FileSource, type SourceText, Workspace } from '../../core/analysis/workspace';
import type { Version } from '../../core/review/version';
import { documentKindOf } from '../../core/syntax/documentKind';
import type { DocumentTree } from './documentTree';

export interface LoadedVersions {
  readonly before: Version;
  readonly after: Version;
  /** Paths of files whose contents differ, those that came or went among them. */
  readonly changed: readonly string[];
}

/** Loads of two trees what a change can reach: the files that differ, and every document that depends on one. */
export async function loadVersions(before: DocumentTree, after: DocumentTree): Promise<LoadedVersions> {
  const names = [...new Set([...before.contents.keys(), ...after.contents.keys()])].toSorted();
  const changed = names.filter((name) => before.contents.get(name) !== after.contents.get(name));
  const texts = { before: textsOf(before, changed), after: textsOf(after, changed) };
  const reached = new Set([...dependentsOf(changed, texts.before), ...dependentsOf(changed, texts.after)]);
  return { ...(await versionsOf({ before, after }, { reached, changed }, texts)), changed };
}

type Texts = ReadonlyMap<string, string>;

/**
 * The texts of a tree, read at once: all of them where something else than a procedure differs, for then anybody may
 * depend on it; else those that differ and whatever procedures link to.
 */
function textsOf(tree: DocumentTree, changed: readonly string[]): Texts {
  const isProcedure = (name: string) => documentKindOf(name) === 'procedure';
  const alone = changed.every(isProcedure);
  const differs = new Set(changed);
  const wanted = [...tree.contents.keys()].filter((name) => !alone || differs.has(name) || !isProcedure(name));
  return readTexts(tree, wanted);
}

/** The files of a tree that can be read as text. */
export function readTexts(tree: DocumentTree, names: Iterable<string>): Texts {
  const texts = new Map<string, string>();
  for (const [name, source] of tree.read([...names])) if (source.is === 'text') texts.set(name, source.text);
  return texts;
}

/**
 * The changed documents and all that name one of them, straight or through others. A text that holds the file's name may
 * link to it; one that does not cannot. What settings say holds for every document below them.
 */
export function dependentsOf(changed: readonly string[], texts: Texts): Set<string> {
  const found = new Set(changed);
  const waiting = [...changed];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    const file = next.slice(next.lastIndexOf('/') + 1);
    const folder = next.slice(0, next.length - file.length);
    const below = documentKindOf(next) === 'settings' ? folder : undefined;
    if (documentKindOf(next) === 'procedure') continue;
    for (const [name, text] of texts) {
      if (found.has(name) || documentKindOf(name) === undefined) continue;
      if (!text.includes(file) && !(below !== undefined && name.startsWith(below))) continue;
      found.add(name);
      waiting.push(name);
    }
  }
  return found;
}

/**
 * Both versions in one workspace, one after the other, as if somebody had typed the difference: whatever is the same in both
 * is read, walked and checked once. Both stand at the place of the newer one.
 */
async function versionsOf(
  { before, after }: { readonly before: DocumentTree; readonly after: DocumentTree },
  { reached, changed }: { readonly reached: ReadonlySet<string>; readonly changed: readonly string[] },
  texts: { readonly before: Texts; readonly after: Texts },
): Promise<Pick<LoadedVersions, 'before' | 'after'>> {
  const { root } = after;
  const workspace = new Workspace([root]);
  const load = async (tree: DocumentTree, known: Texts): Promise<Version> => {
    const uris = [...reached].filter((name) => tree.contents.has(name) && documentKindOf(name) !== undefined);
    const source: FileSource = { read: async (uri) => sourceIn(tree, known, nameBelow(root, uri)) };
    for (const name of uris) await workspace.loadLinked(`${root}/${name}`, source);
    return { snapshot: workspace.snapshot, root, uris: uris.map((name) => `${root}/${name}`).toSorted() };
  };
  const old = await load(before, texts.before);
  for (const name of changed) workspace.set(`${root}/${name}`, sourceIn(after, texts.after, name));
  return { before: old, after: await load(after, texts.after) };
}

function nameBelow(root: string, uri: string): string {
  return uri.startsWith(`${root}/`) ? uri.slice(root.length + 1) : '';
}

function sourceIn(tree: DocumentTree, texts: Texts, name: string): SourceText {
  const text = texts.get(name);
  return text === undefined ? (tree.read([name]).get(name) ?? { is: 'missing' }) : { is: 'text', text };
}
