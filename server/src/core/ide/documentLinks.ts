import { followPath, type LinkTarget, pathsOf } from '../analysis/links';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { SyntaxDocument } from '../syntax/readDocument';
import { sourceRange } from '../syntax/scalarSource';
import type { Span } from '../text/span';

/** A path in a text, and the file that it opens. */
export interface DocumentLink {
  readonly span: Span;
  readonly target: Uri;
}

/** Every path of a document that leads to a file: families, kits, stores and figures. */
export function documentLinksOf(snapshot: Snapshot, document: SyntaxDocument): DocumentLink[] {
  return pathsOf(document).flatMap((path) => {
    const target = uriOf(followPath(snapshot, document.uri, path));
    const span = document.spanOf(sourceRange(path.node, 0, path.node.text.length));
    return target === undefined ? [] : [{ span, target }];
  });
}

/** What is missing or lies outside is told by a finding; a link there would only fail. */
function uriOf(target: LinkTarget): Uri | undefined {
  switch (target.is) {
    case 'document':
      return target.document.uri;
    case 'file':
    case 'not-loaded':
      return target.uri;
    default:
      return undefined;
  }
}
