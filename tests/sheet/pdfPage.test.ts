import { afterAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { print } from './fixtures/printPdf';
import { type PdfText, readPdf } from './fixtures/readPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, caution } from './fixtures/write';

const read = async (sheet: Sheet): Promise<PdfText> => readPdf(await print(sheet));

afterAll(closePdfEngines);

describe('the page', () => {
  test('is A4 or Letter as the sheet says', async () => {
    const a4 = Buffer.from(await print(smallSheet())).toString('latin1');
    const letter = Buffer.from(await print(smallSheet([], { paper: 'letter' }))).toString('latin1');
    expect(a4).toMatch(/MediaBox ?\[0 0 595\.\d+ 841\.\d+\]/u);
    expect(letter).toMatch(/MediaBox ?\[0 0 612 792\]/u);
  });

  test('has no band when nothing stands in the way', async () => {
    expect((await read(smallSheet())).pages.join(' ')).not.toContain('NOT RELEASED');
  });

  test('warns on every page of a withdrawn document', async () => {
    const sheet = smallSheet();
    sheet.header.status = 'withdrawn';
    expect((await read(sheet)).pages[0]).toContain('WITHDRAWN: do not use');
  });

  test('never parts what belongs together at the end of a page', async () => {
    // Steps of many heights, in phases of five, put the page's end at every place in turn.
    const steps = Array.from({ length: 90 }, (_, index) => ({
      ...oneStep(`Title${index}x`, [
        act(`Act${index}x ${'and so on '.repeat((index * 7) % 40)}`, {
          cautions: [caution('warning', `Care${index}x`)],
        }),
        act(`Last${index}x`),
      ]),
      id: `step-${index}`,
      number: index + 1,
      cautions: index % 3 === 0 ? [caution('caution', `Before${index}x`)] : [],
      ...(index % 4 === 0 ? { sign: `Signer${index}x` } : {}),
    }));
    const phases = Array.from({ length: 18 }, (_, phase) => ({
      title: `Phase${phase}x`,
      steps: steps.slice(5 * phase, 5 * phase + 5),
    }));
    const { pages } = await read(smallSheet([], { phases }));
    const pageOf = (word: string): number => pages.findIndex((text) => text.includes(word));
    expect(pages.length).toBeGreaterThan(10);
    for (let index = 0; index < 90; index += 1) {
      const page = pageOf(`Act${index}x`);
      expect([pageOf(`Title${index}x`), pageOf(`Care${index}x`)]).toEqual([page, page]);
      if (index % 3 === 0) expect(pageOf(`Before${index}x`)).toBe(page);
      if (index % 4 === 0) expect(pageOf(`Signer${index}x`)).toBe(pageOf(`Last${index}x`));
      if (index % 5 === 0) expect(pageOf(`Phase${index / 5}x`)).toBe(page);
    }
  });

  test('loses nothing of a caution or an instruction that is taller than a page', async () => {
    const long = Array.from({ length: 1500 }, (_, index) => `w${index}.`).join(' ');
    const sheet = smallSheet([oneStep('Tall', [act(long, { cautions: [caution('danger', long)] })])]);
    const whole = (await read(sheet)).pages.join(' ');
    for (const index of [0, 700, 1499]) expect(whole.split(` w${index}.`).length - 1).toBe(2);
  });

  test('loses nothing of a reading with more rows, or a table with more text, than a page holds', async () => {
    const rows = Array.from({ length: 70 }, (_, index) => `row${index}.`);
    const reading = { name: 'Run-out', unit: 'mm', rows, places: ['1st'] };
    const what = Array.from({ length: 1500 }, (_, index) => `w${index}.`).join(' ');
    const sheet = smallSheet([oneStep('Measure', [act('Measure.', { reading })])], {
      revisions: [{ revision: 'A', date: '2026-01-02', what }],
    });
    const whole = (await read(sheet)).pages.join(' ');
    for (const row of rows) expect(whole).toContain(row);
    for (const index of [0, 700, 1499]) expect(whole).toContain(` w${index}.`);
  });

  test('repeats the head of a long table', async () => {
    const line = { part: 'journal bearing', number: 'OS-1', quantity: '1' };
    const lines = Array.from({ length: 80 }, (_, index) => ({ ...line, item: String(index) }));
    const { pages } = await read(smallSheet([], { kits: [{ number: 'K-1', name: 'kit', revision: '1', lines }] }));
    expect(pages.length).toBeGreaterThan(2);
    for (const text of pages.slice(0, 3)) expect(text).toContain('Picked Item Number Part Quantity');
  });
});
