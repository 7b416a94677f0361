import { afterAll, describe, expect, test } from 'vitest';
import { closePdfEngines, drawPages, type PdfOptions, renderPdf } from '../../server/src/node/pdf/pdfEngine';
import type { DrawnSheet } from '../../server/src/pdf/drawnPages';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { readPdf } from './fixtures/readPdf';
import { smallSheet } from './fixtures/smallSheet';

afterAll(closePdfEngines);

async function drawn(options: PdfOptions, sheet = ostrelSheet): Promise<DrawnSheet> {
  const result = await drawPages(sheet, new Map(), options);
  if ('problem' in result) throw new Error(JSON.stringify(result.problem));
  return result;
}

describe.each(['auto', 'wasm'] as const)('the printed pages as drawings (%s)', (carrier) => {
  test('are as many as are printed, each of the size of its paper', async () => {
    const { pages } = await drawn({ carrier });
    const printed = await renderPdf(ostrelSheet, new Map());
    expect(printed).toBeInstanceOf(Uint8Array);
    expect(pages.length).toBe((await readPdf(printed as Uint8Array)).pages.length);
    for (const page of pages) expect([Math.round(page.width / 10), Math.round(page.height / 10)]).toEqual([60, 84]);
    const [letter] = (await drawn({ carrier }, { ...smallSheet(), paper: 'letter' })).pages;
    expect([letter?.width, letter?.height]).toEqual([612, 792]);
  });

  test('say of every step where it begins, from the top of the first page to the end of the last', async () => {
    const { pages, steps } = await drawn({ carrier });
    const numbers = ostrelSheet.phases.flatMap((phase) => phase.steps.map((step) => step.number));
    expect(steps.map((step) => step.number)).toEqual(numbers);
    const height = pages[0]?.height ?? 0;
    const down = steps.map((step) => (step.page - 1) * height + step.y);
    expect(down).toEqual([...down].sort((a, b) => a - b));
    for (const step of steps) {
      expect(step.page).toBeLessThanOrEqual(pages.length);
      expect(step.y).toBeLessThan(height);
    }
  });

  test('hold nothing that runs or reaches outside, and each letter that they use', async () => {
    for (const { svg } of (await drawn({ carrier })).pages) {
      expect(svg).not.toMatch(/<script|<foreignObject|onclick|href="(?!#|data:)/);
      const defined = new Set([...svg.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id));
      const used = [...svg.matchAll(/href="#([^"]+)"/g)].map(([, id]) => id);
      expect(used.length).toBeGreaterThan(50);
      expect(used.filter((id) => !defined.has(id))).toEqual([]);
    }
  });
});
