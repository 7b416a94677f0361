import { afterAll, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import type { Sides } from '../../server/src/core/sheet/sheet';
import { readConfiguration } from '../../server/src/lsp/clientConfiguration';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { type PageLayout, readLayout, wordsOf } from './fixtures/pdfLayout';
import { print } from './fixtures/printPdf';

const printed = async (sides: Sides): Promise<PageLayout[]> => readLayout(await print({ ...ostrelSheet, sides }));

/** How far the number of the page stands from the left edge, by page. */
function numbersAt(pages: readonly PageLayout[]): number[] {
  return pages.map(({ texts }) => texts.find(({ text }) => /^Page \d+/u.test(text))?.left ?? 0);
}

afterAll(closePdfEngines);

test('printed on both sides, page numbers stand at the outer edge and the record begins on a right-hand page', async () => {
  const pages = await printed('double');
  const middle = (pages[0]?.width ?? 0) / 2;
  numbersAt(pages).forEach((left, index) => {
    if (index % 2 === 0) expect(left).toBeGreaterThan(middle);
    else expect(left).toBeLessThan(middle);
  });
  const record = pages.findIndex((page) => wordsOf(page).includes('Record of the work'));
  expect(record).toBeGreaterThan(0);
  expect(record % 2).toBe(0);
});

test('printed on one side, every page is laid out alike', async () => {
  const pages = await printed('single');
  expect(new Set(numbersAt(pages).map((left) => left > (pages[0]?.width ?? 0) / 2))).toEqual(new Set([true]));
});

test('the file for a browser keeps the same side clear', () => {
  expect(sheetToHtml({ ...ostrelSheet, sides: 'single' }, { mode: 'file' })).toContain('margin: 15mm 13mm 15mm 22mm');
  expect(sheetToHtml({ ...ostrelSheet, sides: 'double' }, { mode: 'file' })).toContain('@page :left');
});

test('an editor says it as a setting, and one side is usual', () => {
  expect(readConfiguration({ sides: 'double' }).sides).toBe('double');
  expect(readConfiguration({ sides: 'both' }).sides).toBe(DEFAULT_SETTINGS.sides);
  expect(DEFAULT_SETTINGS.sides).toBe('single');
});
