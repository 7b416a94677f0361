import { documentValue } from '../../core/analysis/documentUnit';
import type { FileSource } from '../../core/analysis/workspace';
import { Workspace } from '../../core/analysis/workspace';
import { proofOf } from '../../core/sheet/build/proof';
import type { SheetProof } from '../../core/sheet/sheet';
import { documentKindOf } from '../../core/syntax/documentKind';
import { NodeFiles, readText, uriOfPath } from '../../node/nodeFiles';
import { findDocuments } from '../findDocuments';

/** A procedure as it is at one moment. */
export interface ProcedureText {
  readonly path: string;
  readonly proof: SheetProof;
  readonly revision: string;
  readonly status: string;
}

/** Every procedure below a folder with a document number, as the sheet of it would be printed now. */
export async function proceduresOf(folder: string, document: string): Promise<ProcedureText[]> {
  const found: ProcedureText[] = [];
  for (const path of findDocuments([folder]).paths) {
    if (documentKindOf(path.replaceAll('\\', '/')) !== 'procedure') continue;
    const source = readText(path);
    // Most of a folder's procedures do not name the number at all, and need not be read further.
    if (source.is !== 'text' || !source.text.includes(document)) continue;
    const text = await readProcedure(findDocuments([path]).roots, uriOfPath(path), new NodeFiles());
    if (text?.document === document) found.push({ ...text, path });
  }
  return found;
}

/** A procedure from any source of files; undefined where it is none. */
export async function readProcedure(
  roots: readonly string[],
  uri: string,
  files: FileSource,
): Promise<(Omit<ProcedureText, 'path'> & { document: string; workspace: Workspace }) | undefined> {
  const workspace = new Workspace(roots);
  await workspace.loadLinked(uri, files);
  const document = workspace.snapshot.document(uri);
  const value = document === undefined ? undefined : documentValue(document, 'procedure');
  if (value === undefined) return undefined;
  return {
    workspace,
    proof: proofOf(workspace.snapshot, uri),
    document: value.procedure?.text ?? '',
    revision: value.revision?.text ?? '',
    status: value.status?.value ?? 'draft',
  };
}
