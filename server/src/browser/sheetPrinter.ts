import type { Connection } from 'vscode-languageserver';
import type { Sheet } from '../core/sheet/sheet';
import { PRODUCT_FILE, type ProductFileParams, type ProductFileResult } from '../lsp/protocol';
import { drawingName, engineName, fontNames, type PdfAssets, templateNames } from '../pdf/assets';
import type { Carrier } from '../pdf/carrier';
import { createThreadCarrier, type Drawn, type Typeset } from '../pdf/engineThread';
import { preparePrintJob } from '../pdf/printJob';
import { type PrintChoices, printWith } from '../pdf/printWith';
import type { PdfProblem } from '../pdf/problem';
import { BrowserEngineThread } from './browserEngineThread';

/** Prints sheets in a browser. What that takes, 30 MB, is got at the first print, and not at all where nobody prints. */
export class SheetPrinter {
  readonly #connection: Connection;
  readonly #carrier: Carrier;
  #assets: Promise<PdfAssets> | undefined;

  constructor(connection: Connection) {
    this.#connection = connection;
    this.#carrier = createThreadCarrier(() => new BrowserEngineThread(() => this.#engineParts()));
  }

  /** The same bytes as on a desktop. Never rejects. */
  async print(sheet: Sheet, choices: PrintChoices): Promise<Typeset> {
    try {
      const { fonts } = await this.#readAssets();
      return await printWith(async () => this.#carrier, sheet, new Map(), fonts, choices);
    } catch (error) {
      return this.#failed(error);
    }
  }

  /** The printed pages as drawings. Never rejects. */
  async draw(sheet: Sheet): Promise<Drawn> {
    try {
      const { fonts } = await this.#readAssets();
      const files = preparePrintJob(sheet, new Map(), fonts);
      return 'problem' in files ? files : await this.#carrier.draw(files);
    } catch (error) {
      return this.#failed(error);
    }
  }

  #failed(error: unknown): { problem: PdfProblem } {
    this.#assets = undefined;
    return { problem: { kind: 'noEngine', message: error instanceof Error ? error.message : String(error) } };
  }

  async #engineParts() {
    const [script, program, drawing, assets] = await Promise.all([
      this.#file('engineWorker.js'),
      this.#file(`assets/${engineName}`),
      this.#file(`assets/${drawingName}`),
      this.#readAssets(),
    ]);
    return { script, program, drawing, assets };
  }

  #readAssets(): Promise<PdfAssets> {
    this.#assets ??= this.#loadAssets();
    return this.#assets;
  }

  async #loadAssets(): Promise<PdfAssets> {
    const [regular, bold, boldItalic, symbols, ...texts] = await Promise.all(
      [...Object.values(fontNames), ...templateNames].map((name) => this.#file(`assets/${name}`)),
    );
    if (regular === undefined || bold === undefined || boldItalic === undefined || symbols === undefined)
      throw new Error('a font is missing');
    const decoder = new TextDecoder();
    const templates = new Map(templateNames.map((name, at) => [name, decoder.decode(texts[at])]));
    return { templates, fonts: { regular, bold, boldItalic, symbols } };
  }

  async #file(name: string): Promise<Uint8Array<ArrayBuffer>> {
    const params: ProductFileParams = { path: `server/dist/${name}` };
    const { bytes } = await this.#connection.sendRequest<ProductFileResult>(PRODUCT_FILE.method, params);
    return new Uint8Array(bytes);
  }
}
