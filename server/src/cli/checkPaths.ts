import { readFileSync } from 'node:fs';
import { Workspace } from '../core/analysis/workspace';
import { type CheckResult, checkDocument } from '../core/rules/checkDocument';
import type { Finding } from '../core/rules/finding';
import { documentKindOf } from '../core/syntax/documentKind';
import { LineIndex } from '../core/text/lineIndex';
import { NodeFiles, reasonOf, uriOfPath } from '../node/nodeFiles';
import type { FoundDocuments } from './findDocuments';
import { CommandProblem } from './problem';

/** What checking one document gave; its text is kept only as long as a report needs it. */
export interface CheckedDocument {
  readonly path: string;
  readonly uri: string;
  readonly text: string;
  readonly lines: LineIndex;
  readonly result: CheckResult;
  /** Lines of another document that a finding points to; undefined where it is not one of ours. */
  linesOf(uri: string): LineIndex | undefined;
}

/** Checks documents one after another; a procedure is forgotten once it is checked, what many link to is kept. */
export async function* checkPaths(found: FoundDocuments, today: string): AsyncGenerator<CheckedDocument> {
  const workspace = new Workspace(found.roots);
  const files = new NodeFiles();
  for (const path of found.paths) {
    const uri = uriOfPath(path);
    assertReadable(path);
    await workspace.loadLinked(uri, files);
    const document = workspace.snapshot.document(uri);
    if (document === undefined) throw new CommandProblem(`Cannot read ${path}: it is larger than 8 MB`);
    const result = checkDocument(workspace.snapshot, document, { today });
    const { snapshot } = workspace;
    const linesOf = (other: string): LineIndex | undefined => {
      const text = snapshot.document(other)?.text;
      return text === undefined ? undefined : new LineIndex(text);
    };
    yield { path, uri, text: document.text, lines: new LineIndex(document.text), result, linesOf };
    if (documentKindOf(uri) === 'procedure') workspace.forget(uri);
  }
}

/** Says in one line why a file cannot be read, if so. */
export function assertReadable(path: string): void {
  try {
    readFileSync(path);
  } catch (error) {
    throw new CommandProblem(`Cannot read ${path}: ${reasonOf(error)}`);
  }
}

const RANK = { error: 3, warning: 2, info: 1 } as const;
export type AtLeast = keyof typeof RANK;

export function isAtLeast(finding: Finding, severity: AtLeast): boolean {
  return RANK[finding.severity] >= RANK[severity];
}
