import { fileNameOf, relativePath } from '../../analysis/uri';
import { documentKindOf } from '../../syntax/documentKind';
import type { Candidate } from './candidate';
import type { CompletionScene } from './scene';

/** The files of a kind as this document names them, the nearest first. */
export function pathCandidates({ document, files }: CompletionScene, to: string): Candidate[] {
  const fits = (uri: string) => (to === 'figure' ? /\.svg$/i.test(uri) : documentKindOf(uri) === to);
  const paths = files.filter(fits).map((uri) => ({ uri, path: relativePath(document.uri, uri) }));
  return [...paths]
    .sort((a, b) => stepsIn(a.path) - stepsIn(b.path) || (a.path < b.path ? -1 : 1))
    .map(({ uri, path }, rank) => ({ kind: 'file', label: path, filter: `${path} ${fileNameOf(uri)}`, rank }));
}

function stepsIn(path: string): number {
  return path.split('/').length;
}
