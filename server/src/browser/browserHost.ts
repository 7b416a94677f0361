import type { Connection } from 'vscode-languageserver';
import type { Uri } from '../core/analysis/uri';
import type { Sheet } from '../core/sheet/sheet';
import { ClientFiles } from '../lsp/clientFiles';
import type { DrawOutcome, Host, PrintedVariant, PrintOutcome } from '../lsp/host';
import { pdfProblemMessage } from '../pdf/problem';
import { SheetPrinter } from './sheetPrinter';

/** The platform for a server that is a worker of a page: it has a clock, and its client has everything else. */
export class BrowserHost implements Host {
  readonly files: ClientFiles;
  readonly #printer: SheetPrinter;

  constructor(connection: Connection) {
    this.files = new ClientFiles(connection);
    this.#printer = new SheetPrinter(connection);
  }

  documentsBelow(folder: Uri): AsyncGenerator<Uri> {
    return this.files.documentsBelow(folder);
  }

  /** The calendar day where the writer is, not in Greenwich. */
  today(): string {
    const now = new Date();
    const two = (value: number) => String(value).padStart(2, '0');
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  }

  /** Twice round: what has arrived is taken in on the first, and heard by the connection, which uses timers, on the second. */
  async nextTurn(): Promise<void> {
    await messageTurn();
    await this.pause(0);
  }

  pause(milliseconds: number): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, milliseconds));
  }

  async draw(sheet: Sheet): Promise<DrawOutcome> {
    const drawn = await this.#printer.draw(sheet);
    return 'problem' in drawn
      ? { is: 'refused', why: pdfProblemMessage(drawn.problem) }
      : { is: 'drawn', pages: drawn.pages, steps: drawn.steps };
  }

  async print(sheet: Sheet, target: Uri, variant: PrintedVariant): Promise<PrintOutcome> {
    const printed = await this.#printer.print(sheet, { variant });
    if ('problem' in printed) return { is: 'refused', why: pdfProblemMessage(printed.problem) };
    return this.files.write(target, printed);
  }
}

/** One turn of the queue that messages wait in. Timers would do, but a browser slows those that follow on each other. */
function messageTurn(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(undefined);
  });
}
