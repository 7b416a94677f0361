import { Workspace } from '../../core/analysis/workspace';
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
  return {
    before: await versionOf(before, reached, texts.before),
    after: await versionOf(after, reached, texts.after),
    changed,
  };
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

async function versionOf(tree: DocumentTree, reached: ReadonlySet<string>, texts: Texts): Promise<Version> {
  const { root } = tree;
  const workspace = new Workspace([root]);
  const uris = [...reached].filter((name) => tree.contents.has(name) && documentKindOf(name) !== undefined);
  const source = {
    read: async (uri: string) => {
      const name = uri.startsWith(`${root}/`) ? uri.slice(root.length + 1) : '';
      const text = texts.get(name);
      return text === undefined
        ? (tree.read([name]).get(name) ?? ({ is: 'missing' } as const))
        : ({ is: 'text', text } as const);
    },
  };
  for (const name of uris) await workspace.loadLinked(`${root}/${name}`, source);
  return { snapshot: workspace.snapshot, root, uris: uris.map((name) => `${root}/${name}`).toSorted() };
}
