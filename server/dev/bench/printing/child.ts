import { readFileSync, writeFileSync } from 'node:fs';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import PDFDocument from 'pdfkit';
import type { Sheet } from '../../../src/core/sheet/sheet';
import { readPdfAssets } from '../../../src/node/pdf/assets';
import { closePdfEngines, renderPdf } from '../../../src/node/pdf/pdfEngine';
import { median } from '../measure';

export interface Printing {
  pages: number;
  /** CPU milliseconds of the first time in a process, and the median of those after it. */
  cold: number;
  warm: number;
  megabytes: number;
}

const WARM = 3;

async function main([how = '', sheetFile = '', wordsFile = '']: readonly string[]): Promise<void> {
  const sheet = JSON.parse(readFileSync(sheetFile, 'utf8')) as Sheet;
  const times: number[] = [];
  let bytes = new Uint8Array();
  for (let round = 0; round <= WARM; round += 1) {
    const before = cpu();
    bytes = how === 'plain' ? await plain(wordsIn(wordsFile)) : await ours(retitled(sheet, round), how);
    times.push(cpu() - before);
  }
  const megabytes = process.resourceUsage().maxRSS / 1000;
  await closePdfEngines();
  const pages = how === 'plain' ? wordsIn(wordsFile) : await wordsOf(bytes);
  if (how !== 'plain') writeFileSync(wordsFile, JSON.stringify(pages));
  const [cold = 0, ...warm] = times;
  console.log(JSON.stringify({ pages: pages.length, cold, warm: median(warm), megabytes } satisfies Printing));
}

/** With the title of a step in the middle changed, as when a writer prints again after an edit. */
function retitled(sheet: Sheet, round: number): Sheet {
  const copy = structuredClone(sheet);
  const steps = copy.phases.flatMap((phase) => phase.steps);
  const step = steps[steps.length >> 1];
  if (step !== undefined) step.title += ` ${round}`;
  return copy;
}

async function ours(sheet: Sheet, how: string): Promise<Uint8Array<ArrayBuffer>> {
  const printed = await renderPdf(sheet, new Map(), { carrier: how === 'wasm' ? 'wasm' : 'auto' });
  if ('problem' in printed) throw new Error(JSON.stringify(printed.problem));
  return new Uint8Array(printed);
}

/** The words of each page and nothing else, in the same typeface: as little as a printed page can be. */
function plain(pages: readonly string[]): Promise<Uint8Array<ArrayBuffer>> {
  const document = new PDFDocument({ size: 'A4', autoFirstPage: false, margin: 40 });
  document.registerFont('words', Buffer.from(readPdfAssets().fonts.regular));
  document.font('words').fontSize(8);
  const chunks: Uint8Array[] = [];
  document.on('data', (chunk) => chunks.push(chunk));
  const ended = new Promise<Uint8Array<ArrayBuffer>>((resolve) => {
    document.on('end', () => resolve(new Uint8Array(Buffer.concat(chunks))));
  });
  for (const words of pages) document.addPage().text(words);
  document.end();
  return ended;
}

function wordsIn(file: string): string[] {
  return JSON.parse(readFileSync(file, 'utf8')) as string[];
}

async function wordsOf(bytes: Uint8Array): Promise<string[]> {
  const document = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: string[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const { items } = await (await document.getPage(number)).getTextContent();
    pages.push(items.map((item) => ('str' in item ? item.str : '')).join(' '));
  }
  return pages;
}

function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

void main(process.argv.slice(2));
