import { afterAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { print } from './fixtures/printPdf';
import { type PdfText, readPdf } from './fixtures/readPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, caution, clockwise } from './fixtures/write';

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

  test.each([
    ['draft', 0, 'DRAFT: not released'],
    ['draft', 3, 'DRAFT, NOT RELEASED: 3 errors'],
    ['released', 1, 'NOT RELEASED: 1 error'],
    ['withdrawn', 0, 'WITHDRAWN: do not use'],
    ['withdrawn', 2, 'WITHDRAWN: do not use (2 errors)'],
  ] as const)('bears its band on every page: %s with %i errors', async (status, errors, band) => {
    const steps = [oneStep('Long', [act('and so on '.repeat(1500))])];
    const sheet = smallSheet(steps, errors === 0 ? {} : { notReleased: { errors } });
    sheet.header.status = status;
    const { pages } = await read(sheet);
    expect(pages.length).toBeGreaterThan(1);
    for (const text of pages) expect(text).toContain(band);
  });

  test('names a long build at its foot by its ids, so that the foot stays one line', async () => {
    const sheet = smallSheet();
    sheet.header.build = `V4-28R + ${'a long option name, '.repeat(6)}`;
    sheet.header.buildId = 'v4-28r,wheel-44';
    const [first] = (await read(sheet)).pages;
    expect(first).toContain('OP-1 · revision A · v4-28r,wheel-44');
    expect(first).toMatch(/Page 1 of \d+/u);
  });

  test('keeps the signature beside the last act also where that says what to do if it fails', async () => {
    const steps = Array.from({ length: 40 }, (_, index) => ({
      ...oneStep(`Title${index}x`, [
        act('and so on '.repeat((index * 11) % 60)),
        act(`Last${index}x`, {
          ifNot: { text: [{ kind: 'text', text: 'Stop.' }], instructions: [act(`Then${index}x`)] },
        }),
      ]),
      id: `step-${index}`,
      number: index + 1,
      sign: `Signer${index}x`,
    }));
    const { pages } = await read(smallSheet(steps));
    const pageOf = (word: string): number => pages.findIndex((text) => text.includes(word));
    expect(pages.length).toBeGreaterThan(5);
    for (let index = 0; index < 40; index += 1) expect(pageOf(`Signer${index}x`)).toBe(pageOf(`Then${index}x`));
  });

  test('prints a branch without a torque as a line to fill in beside one with it', async () => {
    const setting = {
      kind: 'byOutcome' as const,
      branches: [
        {
          condition: 'When the wheel is used again',
          setting: { kind: 'one' as const, value: clockwise('8 N·m', '71 lbf·in') },
        },
        { condition: 'When the wheel is renewed', setting: { kind: 'blank' as const } },
      ],
    };
    const tighten = act('Tighten.', { torque: { fastener: 'Bolt', setting, tools: [] } });
    expect((await read(smallSheet([oneStep('Tighten', [tighten])]))).pages.join(' ')).toMatch(
      /When the wheel is used again.*8 N·m.*When the wheel is renewed.*Torque not stated: ask before you tighten/u,
    );
  });

  test('prints a plain line before the start as one, and a concession of no step without a number', async () => {
    const { pages } = await read(
      smallSheet([], {
        beforeYouStart: [{ kind: 'line', text: [{ kind: 'text', text: 'The kit lies ready.' }] }],
        concessions: [{ rule: 'any-rule', at: { kind: 'sheet' }, because: 'so', by: 'M. Oduya', until: '2027-01-31' }],
      }),
    );
    expect(pages.join(' ')).toContain('Before you start The kit lies ready.');
    expect(pages.join(' ')).toContain('all any-rule');
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
      looseEnds: [
        { what: `Loose${phase}x`, need: { kind: 'seat' as const }, at: [{ step: 1, stepId: `Where${phase}x` }] },
      ],
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
    for (const text of pages) {
      const heads = text.split('Finger-tight or loose after phase').length;
      expect(text.split(/Loose\d+x/u).length).toBe(heads);
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
