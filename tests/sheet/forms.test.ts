import { afterAll, describe, expect, test } from 'vitest';
import { formsOf } from '../../server/src/core/sheet/forms';
import type { Form, FormBlock, FormCell, FormTable } from '../../server/src/core/sheet/forms/form';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import { labelsFor } from '../../server/src/core/sheet/labels';
import type { Sheet, SheetLanguage } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { print } from './fixtures/printPdf';
import { readPdf } from './fixtures/readPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act } from './fixtures/write';

afterAll(closePdfEngines);

const allForms = (sheet: Sheet, language: SheetLanguage = 'en'): Form[] =>
  Object.values(formsOf(sheet, labelsFor(language))).flat();

const formNamed = (sheet: Sheet, name: string): Form => {
  const form = allForms(sheet).find((one) => one.name === name);
  if (form === undefined) throw new Error(`No form ${name}`);
  return form;
};

const tableIn = (form: Form, name: string): FormTable => {
  const table = form.blocks.find((block) => block.kind === 'table' && block.name === name);
  if (table?.kind !== 'table') throw new Error(`No table ${name}`);
  return table;
};

const wordsOf = (cell: FormCell | undefined): string =>
  cell?.kind === 'text' ? cell.texts.map(({ text }) => text).join(' ') : (cell?.kind ?? '');

describe('the forms of a sheet', () => {
  test('concessions and hazards stand before anything is touched', () => {
    const { safety } = formsOf(ostrelSheet, labelsFor('en'));
    expect(safety.map(({ name }) => name)).toEqual(['concessions', 'hazards']);
  });

  test('each tool has a blank for its number, each consumable for its batch and its day', () => {
    const tools = tableIn(formNamed(ostrelSheet, 'tools'), 'tool-list');
    expect(tools.columns.map(({ head }) => head)).toContain('Shop number');
    for (const row of tools.rows) expect(row.at(-1)).toEqual({ kind: 'blanks', blanks: [] });
    const consumables = tableIn(formNamed(ostrelSheet, 'consumables'), 'consumable-list');
    expect(consumables.rows[0]?.map(({ kind }) => kind)).toEqual(['tick', 'text', 'text', 'text', 'blanks', 'blanks']);
  });

  test('a consumable whose last day is known says it', () => {
    const [first] = ostrelSheet.consumables;
    const consumables = first === undefined ? [] : [{ ...first, expires: '2027-05-01' }];
    const table = tableIn(formNamed(smallSheet([], { consumables }), 'consumables'), 'consumable-list');
    expect(wordsOf(table.rows[0]?.at(-1))).toBe('2027-05-01');
  });

  test('every tool is counted out and back, two in a row, the last row open where they are odd', () => {
    const tools = ['one', 'two', 'three'].map((name) => ({ id: name, name, count: 1 }));
    const { rows } = tableIn(formNamed(smallSheet([], { tools }), 'tally'), 'tally-list');
    expect(rows.map((row) => row.map(wordsOf))).toEqual([
      ['tick', 'tick', 'one', 'tick', 'tick', 'three'],
      ['tick', 'tick', 'two', '', '', ''],
    ]);
  });

  test('a measurement has a blank for each piece and place, by name', () => {
    const rows = [
      { step: 1, stepId: 'one', what: 'Gap', unit: 'mm', rows: ['vane 1', 'vane 2'], places: ['tip', 'root'] },
    ];
    const table = tableIn(formNamed(smallSheet([], { recordTable: rows }), 'record'), 'records');
    expect(table.rows[0]?.[3]).toEqual({
      kind: 'blanks',
      blanks: ['vane 1, tip', 'vane 1, root', 'vane 2, tip', 'vane 2, root'].map((label) => ({ label, unit: 'mm' })),
    });
  });

  test('what the steps leave loose stands before the unit is closed', () => {
    const looseAtEnd = [{ what: 'Cover screws (4)', need: { kind: 'seat' as const }, at: [] }];
    const record = { ...smallSheet().record, looseAtEnd };
    const texts = (sheet: Sheet) =>
      formNamed(sheet, 'last-look').blocks.flatMap((block: FormBlock) => ('text' in block ? [block.text] : []));
    expect(texts(smallSheet([], { record }))).toEqual([
      'This sheet does not make these tight. Stop and ask.',
      'Cover screws (4).',
    ]);
    expect(texts(smallSheet())).toEqual([]);
  });

  test('fitter and inspector sign at the end of every sheet', () => {
    const { rows } = tableIn(formNamed(smallSheet(), 'record'), 'final-list');
    expect(rows.map((row) => wordsOf(row[0]))).toEqual(['Fitter', 'Inspector']);
  });

  test('a sheet without words for the installer, and one that sends nothing out, has no page for them', () => {
    expect(formsOf(smallSheet(), labelsFor('en')).handedOver).toEqual([]);
  });

  test('every row has a cell for each column, in every language', () => {
    for (const language of ['en', 'de', 'es'] as const) {
      for (const { blocks } of allForms(ostrelSheet, language)) {
        for (const block of blocks) {
          if (block.kind !== 'table') continue;
          for (const row of block.rows) expect([block.name, row.length]).toEqual([block.name, block.columns.length]);
        }
      }
    }
  });
});

describe('on paper', () => {
  test('what is filed or handed on has a page of its own', async () => {
    const { pages } = await readPdf(await print(ostrelSheet));
    const only = (words: string): string => {
      const found = pages.filter((page) => page.includes(words));
      expect([words, found.length]).toEqual([words, 1]);
      return found[0] ?? '';
    };
    for (const page of [
      'Fill in this page before anything',
      'Slip for parts sent out',
      'For whoever fits the unit',
    ].map(only)) {
      expect(page).not.toContain('Kit pick list');
      expect(page).not.toContain('Hold points');
    }
    expect(only('Slip for parts sent out')).not.toContain('For whoever fits the unit');
  });

  test('the end is marked once, on the last page', async () => {
    const both = { ...ostrelSheet, sides: 'double' as const };
    for (const sheet of [ostrelSheet, both, smallSheet([oneStep('One', [act('Do it.')])])]) {
      const { pages } = await readPdf(await print(sheet));
      expect(pages.flatMap((page, index) => (page.includes('End of sheet') ? [index] : []))).toEqual([
        pages.length - 1,
      ]);
    }
  });

  test('the preview has the same words of every form', () => {
    const html = sheetToHtml(ostrelSheet, { mode: 'file' });
    for (const { name, title } of allForms(ostrelSheet)) expect(html).toContain(`id="${name}-title">${title}<`);
  });
});
