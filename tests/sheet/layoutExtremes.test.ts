import { afterAll, describe, expect, test } from 'vitest';
import type { Sheet, SheetFigure } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { type PageLayout, readLayout, wordsOf } from './fixtures/pdfLayout';
import { print } from './fixtures/printPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, caution } from './fixtures/write';

const MM = 72 / 25.4;
const layout = async (sheet: Sheet): Promise<PageLayout[]> => readLayout(await print(sheet));
const lettersOf = (pages: readonly PageLayout[]): string =>
  pages
    .map(wordsOf)
    .join(' ')
    .replace(/[\s\u200B]/gu, '');

afterAll(closePdfEngines);

function expectInside(pages: readonly PageLayout[], over = 1): void {
  for (const { width, texts } of pages) {
    for (const { left, right, text } of texts) {
      expect(left, text).toBeGreaterThan(22 * MM - 1);
      expect(right, text).toBeLessThan(width - 13 * MM + over);
    }
  }
}

describe.each(['a4', 'letter'] as const)('on %s', (paper) => {
  test('a caution of forty lines stays whole and with its act', async () => {
    const long = Array.from(
      { length: 40 },
      (_, index) => `Line${index}x of a long caution that fills the width of its panel`,
    );
    const before = Array.from({ length: 12 }, (_, index) => act(`Before${index}x.`));
    const warned = act('Then act.', { cautions: [caution('danger', ...long)] });
    const pages = await layout(smallSheet([oneStep('Long', [...before, warned])], { paper }));
    const warning = pages.find((page) => wordsOf(page).includes('Line0x')) ?? { texts: [] };
    for (const word of ['Line39x', 'Then act.']) {
      expect(warning.texts.map(({ text }) => text).join(' ')).toContain(word);
    }
  });

  test('a word of ten thousand letters is printed whole inside the margins', async () => {
    const word = 'Wort'.repeat(2500);
    const steps = [oneStep(word, [act(word, { notes: [act(word).text] })])];
    const pages = await layout(smallSheet([], { paper, phases: [{ title: word, steps, looseEnds: [] }] }));
    // The engine sets a line of one endless word up to a letter too wide.
    expectInside(pages, 6);
    expect(lettersOf(pages).split('Wort').length - 1).toBeGreaterThanOrEqual(9980);
  });

  test('a title and a build that are too long for a line leave head and foot where they are', async () => {
    const sheet = smallSheet([oneStep('Short', [act('Act.')])], { paper });
    sheet.header.title = 'Wartungsanleitungsgesamtverzeichnis und '.repeat(40);
    sheet.header.buildId = 'v4-28r,wheel-44,'.repeat(40);
    const [first] = await layout(sheet);
    const head = first?.texts.filter(({ bottom }) => bottom < 19 * MM) ?? [];
    expect(new Set(head.map(({ top }) => Math.round(top))).size).toBe(1);
    expect(wordsOf(first ?? { width: 0, height: 0, texts: [], shapes: [] })).toContain('Page 1 of');
  });

  test('a reading at twelve places is inside the margins with a blank for each', async () => {
    const places = Array.from({ length: 12 }, (_, index) => `p${index}x`);
    const reading = { name: 'Run-out', unit: 'uvw', rows: ['one', 'two'], places };
    const pages = await layout(smallSheet([oneStep('Measure', [act('Measure.', { reading })])], { paper }));
    expectInside(pages);
    const words = pages.map(wordsOf).join(' ');
    for (const place of places) expect(words).toContain(place);
    expect(words.split('uvw').length - 1).toBe(24);
  });

  test('a figure is never larger than drawn, nor wider than its column, and a small one stays as it is', async () => {
    const figures = [drawing(40, 30), drawing(3000, 800), drawing(100, 4000)];
    const pages = await layout(smallSheet([oneStep('Look', [act('Look.')], { figures })], { paper }));
    const frames = pages
      .flatMap(({ shapes }) => shapes)
      .map((shape) => [shape.right - shape.left, shape.bottom - shape.top]);
    const near = (width: number, height: number) =>
      frames.some(([wide = 0, high = 0]) => Math.abs(wide - width) < 2 && Math.abs(high - height) < 2);
    // A pixel of a drawing is 3/4 of a point.
    expect(near(30, 22.5)).toBe(true);
    expect(near(145 * MM, (145 * MM * 800) / 3000)).toBe(true);
    expect(near((62 * MM * 100) / 4000, 62 * MM)).toBe(true);
  });
});

test('a step of many pages numbers its instructions through and loses none', async () => {
  const acts = Array.from({ length: 150 }, (_, index) => act(`Act${index}x ${'and so on '.repeat(index % 30)}`));
  const pages = await layout(smallSheet([oneStep('Long', acts)]));
  const numbers = pages.flatMap(({ texts }) => texts).filter(({ text }) => /^1\.\d+$/u.test(text));
  expect(numbers.map(({ text }) => text)).toEqual(acts.map((_, index) => `1.${index + 1}`));
});

function drawing(width: number, height: number): SheetFigure {
  const frame = `<rect width="${width}" height="${height}" fill="none" stroke="black"/>`;
  const svg = `<svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}">${frame}</svg>`;
  return { id: `drawing-${width}`, alt: 'A frame', image: { kind: 'svg', svg } };
}
