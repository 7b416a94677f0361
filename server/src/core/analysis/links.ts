import type { PathRef } from '../model/values';
import { type DocumentKind, documentKindOf } from '../syntax/documentKind';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentUnit } from './documentUnit';
import type { Snapshot } from './snapshot';
import { summariesOf } from './unitSummary';
import { isInside, resolvePath, type Uri } from './uri';

/** Where a path leads. */
export type LinkTarget =
  | { readonly is: 'document'; readonly document: SyntaxDocument }
  | { readonly is: 'file'; readonly uri: Uri; readonly text: string }
  | { readonly is: 'not-loaded'; readonly uri: Uri }
  | { readonly is: 'missing'; readonly uri: Uri }
  | { readonly is: 'unreadable'; readonly uri: Uri; readonly reason: string }
  | { readonly is: 'wrong-kind'; readonly uri: Uri; readonly found: DocumentKind | undefined }
  | { readonly is: 'outside'; readonly uri: Uri }
  | { readonly is: 'not-relative' };

/** Follows a path of a document. It never throws and never leads out of the folders that were opened. */
export function followPath(snapshot: Snapshot, from: Uri, path: PathRef): LinkTarget {
  const uri = resolvePath(from, path.path);
  if (uri === undefined) return { is: 'not-relative' };
  if (isOutside(snapshot.roots, uri)) return { is: 'outside', uri };
  if (isWrongKind(uri, path)) return { is: 'wrong-kind', uri, found: documentKindOf(uri) };
  const state = snapshot.file(uri);
  if (state === undefined) return { is: 'not-loaded', uri };
  if (state.is === 'missing') return { is: 'missing', uri };
  if (state.is === 'unreadable') return { is: 'unreadable', uri, reason: state.reason };
  return state.is === 'document' ? state : { is: 'file', uri, text: state.text };
}

/** All paths that a document names, in the order of its text. */
export function pathsOf(document: SyntaxDocument): PathRef[] {
  const unit = documentUnit(document);
  return unit === undefined ? [] : summariesOf(unit).flatMap((one) => one.paths);
}

/** The paths that a document names, each once. Gathered once for a reading. */
export function targetsIn(document: SyntaxDocument): readonly PathRef[] {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const unit = documentUnit(document);
  const byTarget = new Map<string, PathRef>();
  for (const summary of unit === undefined ? [] : summariesOf(unit)) {
    for (const [key, path] of summary.targets) if (!byTarget.has(key)) byTarget.set(key, path);
  }
  const targets = [...byTarget.values()];
  remembered.set(document, targets);
  return targets;
}

const remembered = new WeakMap<SyntaxDocument, readonly PathRef[]>();

/** The files that a document names and that may be read, whether or not anyone has yet. */
export function linkedUris({ roots }: Snapshot, document: SyntaxDocument): readonly Uri[] {
  const known = linked.get(document);
  if (known?.roots === roots) return known.uris;
  const uris = targetsIn(document).flatMap((path) => {
    const uri = resolvePath(document.uri, path.path);
    return uri === undefined || isOutside(roots, uri) || isWrongKind(uri, path) ? [] : [uri];
  });
  const once = [...new Set(uris)];
  linked.set(document, { roots, uris: once });
  return once;
}

/** Where the paths lead depends on the folders that were opened, and not on what lies there. */
const linked = new WeakMap<SyntaxDocument, { readonly roots: readonly Uri[]; readonly uris: readonly Uri[] }>();

function isOutside(roots: readonly Uri[], uri: Uri): boolean {
  return roots.length > 0 && !roots.some((root) => isInside(uri, root));
}

function isWrongKind(uri: Uri, { to }: PathRef): boolean {
  return to === 'figure' ? !/\.svg$/i.test(uri) : documentKindOf(uri) !== to;
}
