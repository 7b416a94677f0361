import { setImmediate, setTimeout } from 'node:timers/promises';
import { setFlagsFromString } from 'node:v8';
import type { Connection } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import type { FileSource } from '../core/analysis/workspace';
import type { Sheet } from '../core/sheet/sheet';
import { ClientFiles } from '../lsp/clientFiles';
import type { DrawOutcome, Host, PrintedVariant, PrintOutcome } from '../lsp/host';
import { pdfProblemMessage } from '../pdf/problem';
import { NodeFiles, pathOfUri, reasonOf, uriOfPath, walkDocuments, writeWhole } from './nodeFiles';
import { rulePage } from './rulePages';

/** The platform for a server that runs on Node. What is not on disk is asked of the client. */
export class NodeHost implements Host {
  readonly files: FileSource = { read: (uri) => (isOnDisk(uri) ? this.#disk : this.#client).read(uri) };
  readonly #disk = new NodeFiles();
  readonly #client: ClientFiles;

  constructor(connection: Connection) {
    this.#client = new ClientFiles(connection);
  }

  async *documentsBelow(folder: Uri): AsyncGenerator<Uri> {
    if (!isOnDisk(folder)) yield* this.#client.documentsBelow(folder);
    else for await (const path of walkDocuments(pathOfUri(folder))) yield uriOfPath(path);
  }

  /** The calendar day where the writer is, not in Greenwich. */
  today(): string {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }

  /**
   * How far the heap may grow over what is alive in it, as a share of that, before it is looked through: by itself V8
   * takes up to three times as much. Zero leaves it to V8 again.
   */
  spareMemory(isSpared: boolean): void {
    setFlagsFromString(`--heap-growing-percent=${isSpared ? 50 : 0}`);
  }

  rulePage(rule: string): string | undefined {
    return rulePage(rule);
  }

  /** Twice round: what has arrived is taken in on the first, and heard by the connection on the second. */
  async nextTurn(): Promise<void> {
    await setImmediate();
    await setImmediate();
  }

  async pause(milliseconds: number): Promise<void> {
    await setTimeout(milliseconds);
  }

  async draw(sheet: Sheet): Promise<DrawOutcome> {
    const { drawPages } = await loadPrinting();
    const drawn = await drawPages(sheet, new Map());
    return 'problem' in drawn
      ? { is: 'refused', why: pdfProblemMessage(drawn.problem) }
      : { is: 'drawn', pages: drawn.pages, steps: drawn.steps };
  }

  async print(sheet: Sheet, target: Uri, variant: PrintedVariant): Promise<PrintOutcome> {
    const { renderPdf } = await loadPrinting();
    const printed = await renderPdf(sheet, new Map(), { variant });
    if ('problem' in printed) return { is: 'refused', why: pdfProblemMessage(printed.problem) };
    if (!isOnDisk(target)) return this.#client.write(target, printed);
    try {
      writeWhole(pathOfUri(target), printed);
      return { is: 'printed' };
    } catch (error) {
      return { is: 'refused', why: `Cannot write ${pathOfUri(target)}: ${reasonOf(error)}` };
    }
  }
}

function isOnDisk(uri: Uri): boolean {
  return uri.startsWith('file:');
}

/** Half of all code serves the printed sheet alone, so it is read when somebody prints. */
function loadPrinting(): Promise<typeof import('./pdf/pdfEngine')> {
  return import('./pdf/pdfEngine');
}
