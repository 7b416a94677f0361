import { type FileSource, type SourceText, Workspace } from '../../server/src/core/analysis/workspace';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';

/** Files held in memory, by path relative to the root. */
export class MemoryFiles implements FileSource {
  static readonly ROOT = 'file:///work';

  constructor(readonly files: Readonly<Record<string, string>>) {}

  async read(uri: string): Promise<SourceText> {
    const text = this.files[uri.slice(MemoryFiles.ROOT.length + 1)];
    return text === undefined ? { is: 'missing' } : { is: 'text', text };
  }
}

/** A workspace with one document and all that it links to. */
export async function openFiles(
  files: Readonly<Record<string, string>>,
  at: string,
): Promise<{ workspace: Workspace; document: SyntaxDocument }> {
  const workspace = new Workspace([MemoryFiles.ROOT]);
  const uri = `${MemoryFiles.ROOT}/${at}`;
  await workspace.loadLinked(uri, new MemoryFiles(files));
  const document = workspace.snapshot.document(uri);
  if (document === undefined) throw new Error(`No document at ${at}`);
  return { workspace, document };
}
