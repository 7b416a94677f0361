import { setImmediate, setTimeout } from 'node:timers/promises';
import type { Uri } from '../core/analysis/uri';
import type { Sheet } from '../core/sheet/sheet';
import type { Host, PrintOutcome } from '../lsp/host';
import { NodeFiles, pathOfUri, reasonOf, uriOfPath, walkDocuments, writeWhole } from './nodeFiles';
import { pdfProblemMessage, renderPdf } from './pdf/pdfEngine';

/** The platform for a server that runs on Node. */
export class NodeHost implements Host {
  readonly files = new NodeFiles();

  async *documentsBelow(folder: Uri): AsyncGenerator<Uri> {
    if (!folder.startsWith('file:')) return;
    for await (const path of walkDocuments(pathOfUri(folder))) yield uriOfPath(path);
  }

  /** The calendar day where the writer is, not in Greenwich. */
  today(): string {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }

  /** Twice round: what has arrived is taken in on the first, and heard by the connection on the second. */
  async nextTurn(): Promise<void> {
    await setImmediate();
    await setImmediate();
  }

  async pause(milliseconds: number): Promise<void> {
    await setTimeout(milliseconds);
  }

  async print(sheet: Sheet, target: Uri): Promise<PrintOutcome> {
    if (!target.startsWith('file:')) return { is: 'refused', why: 'A sheet can be printed to a file on disk only.' };
    const printed = await renderPdf(sheet, new Map());
    if ('problem' in printed) return { is: 'refused', why: pdfProblemMessage(printed.problem) };
    try {
      writeWhole(pathOfUri(target), printed);
      return { is: 'printed' };
    } catch (error) {
      return { is: 'refused', why: `Cannot write ${pathOfUri(target)}: ${reasonOf(error)}` };
    }
  }
}
