import type { Sheet } from '../../core/sheet/sheet';
import type { Carrier } from '../../pdf/carrier';
import type { DrawnSheet } from '../../pdf/drawnPages';
import type { FigureFiles } from '../../pdf/figures';
import { preparePrintJob } from '../../pdf/printJob';
import { type PrintChoices, printWith } from '../../pdf/printWith';
import type { PdfProblem } from '../../pdf/problem';
import { readPdfAssets } from './assets';
import { createNativeCarrier } from './nativeCarrier';
import { createWasmCarrier } from './wasmCarrier';
import { bundledWorker, createWorkerCarrier } from './workerCarrier';

export type { FigureFiles } from '../../pdf/figures';
export { type PdfProblem, pdfProblemMessage } from '../../pdf/problem';
export type { PdfStandard } from '../../pdf/xmp';

export interface PdfOptions extends PrintChoices {
  /** `auto` takes the native engine where it is installed; `wasm` never does. Both give the same bytes. */
  carrier?: 'auto' | 'wasm';
  /** The worker's script; by default the one beside the bundle, and from source no worker at all. */
  workerFile?: string;
}

const warmCarriers = new Map<string, Promise<Carrier>>();

/**
 * Prints a sheet as a tagged PDF with its sources attached. The bytes depend on the sheet and the figures alone: no clock, no machine's fonts.
 * `figures` holds the files that figures name; one that is missing prints its description instead. Never rejects.
 */
export async function renderPdf(
  sheet: Sheet,
  figures: FigureFiles,
  options: PdfOptions = {},
): Promise<Uint8Array | { problem: PdfProblem }> {
  try {
    const printed = await printWith(() => carrierFor(options), sheet, figures, readPdfAssets().fonts, options);
    if ('problem' in printed && printed.problem.kind === 'noEngine') warmCarriers.delete(carrierKey(options));
    return printed;
  } catch (error) {
    warmCarriers.delete(carrierKey(options));
    return { problem: { kind: 'noEngine', message: error instanceof Error ? error.message : String(error) } };
  }
}

/** The same pages as drawings, with where their steps begin. Never rejects. */
export async function drawPages(
  sheet: Sheet,
  figures: FigureFiles,
  options: PdfOptions = {},
): Promise<DrawnSheet | { problem: PdfProblem }> {
  try {
    const files = preparePrintJob(sheet, figures, readPdfAssets().fonts);
    if ('problem' in files) return files;
    const drawn = await (await carrierFor(options)).draw(files);
    if ('problem' in drawn && drawn.problem.kind === 'noEngine') warmCarriers.delete(carrierKey(options));
    return drawn;
  } catch (error) {
    warmCarriers.delete(carrierKey(options));
    return { problem: { kind: 'noEngine', message: error instanceof Error ? error.message : String(error) } };
  }
}

/** Ends the engines that were kept warm, for a process that is about to end. */
export async function closePdfEngines(): Promise<void> {
  const carriers = [...warmCarriers.values()];
  warmCarriers.clear();
  for (const carrier of carriers) await (await carrier).close();
}

function carrierKey({ carrier = 'auto', workerFile = '' }: PdfOptions): string {
  return `${carrier} ${workerFile}`;
}

function carrierFor(options: PdfOptions): Promise<Carrier> {
  const key = carrierKey(options);
  const known = warmCarriers.get(key);
  if (known !== undefined) return known;
  const started = startCarrier(options);
  warmCarriers.set(key, started);
  return started;
}

async function startCarrier({ carrier = 'auto', workerFile = bundledWorker() }: PdfOptions): Promise<Carrier> {
  const native = carrier === 'auto' ? createNativeCarrier() : undefined;
  if (native !== undefined) return native;
  return workerFile === undefined ? createWasmCarrier() : createWorkerCarrier(workerFile);
}
