import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildSync } from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { closePdfEngines, type FigureFiles, pdfProblemMessage, renderPdf } from '../../server/src/node/pdf/pdfEngine';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { print } from './fixtures/printPdf';
import { type PdfText, readPdf } from './fixtures/readPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, caution, clockwise } from './fixtures/write';

const none: FigureFiles = new Map();
const read = async (sheet: Sheet): Promise<PdfText> => readPdf(await print(sheet));

afterAll(closePdfEngines);

describe('the printed rebuild of an Ostrel V4', () => {
  let pdf: PdfText;
  beforeAll(async () => {
    pdf = await read(ostrelSheet);
  }, 30_000);

  test('counts its pages in the footer of each', () => {
    expect(pdf.pages.length).toBeGreaterThan(5);
    pdf.pages.forEach((text, index) => {
      expect(text).toContain(`Page ${index + 1} of ${pdf.pages.length}`);
      expect(text).toContain('OP-410 · revision C · V4-28R with the 44 mm wheel');
    });
  });

  test('says on every page that it is not released, and how many errors stand', () => {
    for (const text of pdf.pages) expect(text).toContain('NOT RELEASED: 2 errors');
  });

  test('prints each torque at 16 points or more, with the second unit and the direction in words', () => {
    const large = pdf.items
      .filter((item) => item.size >= 16)
      .map((item) => item.text)
      .join('');
    for (const value of ['5.1 ± 0.3 N·m', '9 ± 1 N·m', '6 N·m']) expect(large).toContain(value);
    const whole = pdf.pages.join(' ');
    expect(whole).toContain('(45 ± 3 lbf·in)');
    expect(whole).toContain('Turn counter-clockwise (left-hand thread)');
    expect(whole).toContain('Turn clockwise (right-hand thread)');
  });

  test('prints its sentences in 10.5 points or more', () => {
    const sentence = pdf.items.find((item) => item.text.includes('Look at the thread end'));
    expect(sentence?.size).toBeGreaterThanOrEqual(10.5);
  });

  test('prints both branches of an outcome that only the bench can tell', () => {
    const whole = pdf.pages.join(' ');
    expect(whole).toContain('Only when the compressor nut is left-hand');
    expect(whole).toContain('Only when the compressor nut is right-hand');
  });

  test('prints what is loose below its phase, the tally of temporary parts and what becomes of each part', () => {
    const whole = pdf.pages.join(' ');
    expect(whole).toContain('Flange bolts (3 of 4)');
    expect(whole).toContain('6 N·m (53 lbf·in), then turn 60°');
    expect(whole).toContain('Nothing: it comes off again');
    expect(whole).toContain('Temporary parts: count them out');
    expect(whole).toContain('of 16');
    expect(whole).toContain('compressor wheel, to the customer · step 10');
    expect(whole).toContain('Off the unit at the end');
  });

  test('leaves a torque that nobody stated blank, and says so', () => {
    expect(pdf.pages.join(' ')).toContain('Oil inlet union Torque not stated: ask before you tighten');
  });

  test('does not print findings, which are for the writer', () => {
    expect(pdf.pages.join(' ')).not.toContain('torque-tool-too-coarse');
  });

  test('is tagged, titled, in a language, and describes its figures', () => {
    expect(pdf.title).toBe('OP-410 Major rebuild of the Ostrel V4');
    expect(pdf.language).toBe('en');
    expect(pdf.tagged).toBe(true);
    for (const role of ['H1', 'H2', 'Table', 'TH', 'Figure', 'Link']) expect(pdf.roles).toContain(role);
    expect(pdf.alternatives.some((text) => text.includes('groove cut around it'))).toBe(true);
  });
});

describe('the bytes', () => {
  test('are the same at every printing', async () => {
    expect(Buffer.from(await print(ostrelSheet)).equals(await print(ostrelSheet))).toBe(true);
  });

  test('differ when one torque does', async () => {
    const torque = (primary: string) =>
      act('Tighten the [nut].', {
        torque: { fastener: 'Nut', setting: { kind: 'one', value: clockwise(primary, '80 lbf·in') }, tools: [] },
      });
    const [nine, eight] = [
      await print(smallSheet([oneStep('Tighten', [torque('9 N·m')])])),
      await print(smallSheet([oneStep('Tighten', [torque('8 N·m')])])),
    ];
    expect(Buffer.from(nine).equals(eight)).toBe(false);
  });

  test('are the same from the native engine, from WebAssembly and from WebAssembly in a worker', async () => {
    const native = await print(ostrelSheet);
    const inThread = await print(ostrelSheet, { carrier: 'wasm' });
    expect(Buffer.from(native).equals(inThread)).toBe(true);
    await withBundledWorker(async (workerFile) => {
      const inWorker = await print(ostrelSheet, { carrier: 'wasm', workerFile });
      expect(Buffer.from(native).equals(inWorker)).toBe(true);
      expect(Buffer.from(await print(ostrelSheet, { carrier: 'wasm', workerFile })).equals(native)).toBe(true);
      await closePdfEngines();
    });
  }, 120_000);
});

// The worker is bundled as the build does it, next to the sources so that it finds the assets where they are.
async function withBundledWorker(use: (workerFile: string) => Promise<void>): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'witnessmark-worker-'));
  const source = join(__dirname, '../../server/src/node');
  const outfile = join(folder, 'typstWorker.cjs');
  try {
    buildSync({
      entryPoints: [join(source, 'typstWorker.ts')],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'cjs',
      define: { 'import.meta.url': JSON.stringify('file:///'), __dirname: JSON.stringify(join(source, 'pdf')) },
      logLevel: 'error',
    });
    await use(outfile);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe('what cannot be printed', () => {
  test('a character that no font has is a problem, never a blank', async () => {
    const sheet = smallSheet([oneStep('Loosen 螺母', [act('Use the 🔧.')])]);
    const characters = [...'螺母🔧'].map((character) => ({ character, place: 'step 1' }));
    expect(await renderPdf(sheet, none)).toEqual({ problem: { kind: 'missingGlyph', characters } });
    expect(pdfProblemMessage({ kind: 'missingGlyph', characters })).toContain('“螺” (U+87BA) in step 1');
  });

  test('so is one inside a drawing', async () => {
    const image = { kind: 'svg', svg: '<svg viewBox="0 0 9 9"><text y="9">&#x87BA;</text></svg>' } as const;
    const sheet = smallSheet([oneStep('Look', [], { figures: [{ id: 'drawing', alt: 'A drawing', image }] })]);
    const characters = [{ character: '螺', place: 'figure drawing' }];
    expect(await renderPdf(sheet, none)).toEqual({ problem: { kind: 'missingGlyph', characters } });
  });

  test('nor is a figure that nothing says in words what it shows', async () => {
    const image = { kind: 'svg', svg: '<svg viewBox="0 0 9 9"><rect width="9" height="9"/></svg>' } as const;
    for (const alt of ['', '  ', 'drawing']) {
      const sheet = smallSheet([oneStep('Look', [], { figures: [{ id: 'drawing', alt, image }] })]);
      const printed = await renderPdf(sheet, none);
      expect(printed).toEqual({ problem: { kind: 'figure', figure: 'drawing', fault: { kind: 'noText' } } });
      if ('problem' in printed) expect(pdfProblemMessage(printed.problem)).toContain('say in "alt" what it shows');
    }
  });

  test('nor a picture of 50 MB', async () => {
    const image = { kind: 'file', name: 'scan.png', mediaType: 'image/png' } as const;
    const sheet = smallSheet([oneStep('Look', [], { figures: [{ id: 'scan', alt: 'A scan', image }] })]);
    const printed = await renderPdf(sheet, new Map([['scan.png', new Uint8Array(50_000_000)]]));
    expect(printed).toMatchObject({ problem: { kind: 'figure', figure: 'scan', fault: { kind: 'tooLarge' } } });
  });

  test('a drawing that is none is refused with a reason, and the next sheet prints', async () => {
    const image = { kind: 'svg', svg: '<svg><g></svg>' } as const;
    const sheet = smallSheet([oneStep('Look', [], { figures: [{ id: 'drawing', alt: 'A drawing', image }] })]);
    for (const carrier of ['auto', 'wasm'] as const) {
      expect(await renderPdf(sheet, none, { carrier })).toMatchObject({ problem: { kind: 'refused' } });
      expect(await renderPdf(smallSheet(), none, { carrier })).toBeInstanceOf(Uint8Array);
    }
  }, 60_000);

  test('a picture that is not given prints its words', async () => {
    const image = { kind: 'file', name: 'gone.png', mediaType: 'image/png' } as const;
    const figures = [{ id: 'photo', alt: 'The ring in its groove', image }];
    expect((await read(smallSheet([oneStep('Look', [], { figures })]))).pages.join(' ')).toContain(
      'The ring in its groove',
    );
  });
});

describe('a worker', () => {
  test('that cannot start, or ends at once, is a problem each time and never a wait', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'witnessmark-worker-'));
    const ending = join(folder, 'ending.cjs');
    writeFileSync(ending, 'process.exit(0)');
    for (const workerFile of [join(folder, 'missing.cjs'), ending, ending]) {
      const printed = await renderPdf(smallSheet(), none, { carrier: 'wasm', workerFile });
      expect(printed).toMatchObject({ problem: { kind: 'noEngine' } });
    }
    rmSync(folder, { recursive: true });
  });

  test('that has ended is started again for the next sheet', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'witnessmark-worker-'));
    const once = join(folder, 'once.cjs');
    // It answers with the sheet's number in the queue of its own thread, and ends.
    writeFileSync(
      once,
      `const { parentPort } = require('node:worker_threads');
      parentPort.on('message', ({ id }) => {
        parentPort.postMessage({ id, result: { problem: { kind: 'noEngine', message: 'thread ' + id } }, last: true });
        parentPort.close();
      });`,
    );
    const options = { carrier: 'wasm', workerFile: once } as const;
    const printed = await Promise.all([1, 2, 3].map(() => renderPdf(smallSheet(), none, options)));
    // What it answers is no file of the engine; that each got an answer, and from a thread of its own, is the matter.
    expect(printed).toEqual(Array.from({ length: 3 }, () => ({ problem: { kind: 'noEngine', message: 'thread 1' } })));
    rmSync(folder, { recursive: true });
  });
});

describe('hostile text prints as text', () => {
  const hostile = '#sys.version *a* _b_ $x$ `c` @d <e> = f \\ // g [h] #panic("no") {page}';

  test('markup of the typesetter', async () => {
    const sheet = smallSheet([oneStep(hostile, [act('x', { text: [{ kind: 'text', text: hostile }] })])]);
    sheet.header.build = hostile;
    const { pages } = await read(sheet);
    expect(pages[0]?.split(hostile).length).toBeGreaterThan(3);
  });

  test('controls and marks that turn the reading order around are shown', async () => {
    const text = 'Turn \u202Eleft\u202C\u0007 and\nright';
    const { pages } = await read(smallSheet([oneStep('Turn', [act('x', { text: [{ kind: 'text', text }] })])]));
    expect(pages[0]).toContain('Turn \uFFFDleft\uFFFD\uFFFD and right');
  });

  test('a word of ten thousand characters stays inside the page', async () => {
    const word = 'M'.repeat(10_000);
    const { pages } = await read(smallSheet([oneStep('Long', [act(word)], { cautions: [caution('caution', word)] })]));
    const printed = pages.join('').match(/M/gu)?.length;
    expect(printed).toBeGreaterThanOrEqual(20_000);
  });

  test('a link to a step that is not there, and two steps of one id', async () => {
    const text = [
      { kind: 'stepLink', text: 'step 9', step: 'nowhere' } as const,
      { kind: 'stepLink', text: 'step 1', step: 'only-step' } as const,
    ];
    const first = oneStep('First', [act('x', { text })]);
    const { pages } = await read(smallSheet([first, { ...first, number: 2 }]));
    expect(pages.join(' ')).toContain('step 9step 1');
  });
});
