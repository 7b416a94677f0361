import type { SourceText } from '../../core/analysis/workspace';
import { documentKindOf } from '../../core/syntax/documentKind';

/** The documents and figures of one version, by their path below its folder with forward slashes. */
export interface DocumentTree {
  /** What a person calls the version. */
  readonly label: string;
  /** The folder, as a URI of the core. */
  readonly root: string;
  /** A name for what is in each file: equal where the contents are equal. */
  readonly contents: ReadonlyMap<string, string>;
  /** Reads files of the tree; one that is not there, or too large, says so. */
  read(names: readonly string[]): ReadonlyMap<string, SourceText>;
}

/** Whether a file takes part: a document of ours, or a figure. */
export function takesPart(name: string): boolean {
  const hidden = name.split('/').some((part) => part.startsWith('.') || part === 'node_modules');
  return !hidden && (documentKindOf(name) !== undefined || /\.svg$/i.test(name));
}
