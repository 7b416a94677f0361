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
  if (snapshot.roots.length > 0 && !snapshot.roots.some((root) => isInside(uri, root))) return { is: 'outside', uri };
  const kind = documentKindOf(uri);
  if (path.to === 'figure' ? !/\.svg$/i.test(uri) : kind !== path.to) return { is: 'wrong-kind', uri, found: kind };
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

/** The paths that a document names, each once. */
export function targetsIn(document: SyntaxDocument): readonly PathRef[] {
  const unit = documentUnit(document);
  const targets = new Map<string, PathRef>();
  for (const summary of unit === undefined ? [] : summariesOf(unit)) {
    for (const [key, path] of summary.targets) if (!targets.has(key)) targets.set(key, path);
  }
  return [...targets.values()];
}

/** The files that a document names and that may be read, whether or not anyone has yet. */
export function linkedUris(snapshot: Snapshot, document: SyntaxDocument): Uri[] {
  const targets = targetsIn(document).map((path) => followPath(snapshot, document.uri, path));
  const uris = targets.flatMap((target) => {
    if (target.is === 'document') return [target.document.uri];
    return target.is === 'outside' || target.is === 'not-relative' || target.is === 'wrong-kind' ? [] : [target.uri];
  });
  return [...new Set(uris)];
}
