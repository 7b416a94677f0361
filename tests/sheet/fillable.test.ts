import { PDF } from '@libpdf/core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { nameFields } from '../../server/src/core/sheet/fields/nameFields';
import type { RecordPlan } from '../../server/src/core/sheet/record/recordPlan';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { readForm } from '../../server/src/pdf/form/readForm';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { print } from './fixtures/printPdf';
import { type FormPage, readFormPages } from './fixtures/readFormPages';
import { sampleSheet } from './fixtures/sampleSheets';

const fillable = (sheet: Sheet, carrier: 'auto' | 'wasm' = 'auto') => print(sheet, { variant: 'fillable', carrier });

afterAll(closePdfEngines);

async function planOf(bytes: Uint8Array): Promise<RecordPlan> {
  const form = await readForm(bytes);
  if ('problem' in form) throw new Error(form.problem);
  return form.plan;
}

describe('a fillable sheet', () => {
  let bytes: Uint8Array;
  let pages: FormPage[];
  beforeAll(async () => {
    bytes = await fillable(ostrelSheet);
    pages = await readFormPages(bytes);
  }, 60_000);

  test('has every field of its plan on a page, and no other', async () => {
    const planned = (await planOf(bytes)).fields.map((field) => field.name).sort();
    const shown = [...new Set(pages.flatMap((page) => page.widgets.map((widget) => widget.name)))].sort();
    expect(shown).toEqual(planned);
    expect(planned.length).toBeGreaterThan(50);
  });

  test('says of each field where it stands and what it is', () => {
    const words = pages.flatMap((page) => page.widgets.map((widget) => widget.tooltip));
    expect(words.every((each) => each !== '')).toBe(true);
    expect(words.some((each) => /^Step \d+\.\d+, Actual torque, .*nut/iu.test(each))).toBe(true);
  });

  test('lays no field over another, and each within its page', () => {
    for (const { width, height, widgets } of pages) {
      for (const { rect, name } of widgets) {
        const [left = -1, bottom = -1, right = Infinity, top = Infinity] = rect;
        expect([left >= 0, bottom >= 0, right <= width, top <= height], name).toEqual([true, true, true, true]);
      }
      const overlaps = widgets.flatMap((one, index) =>
        widgets
          .slice(index + 1)
          .flatMap((other) => (overlap(one.rect, other.rect) ? [`${one.name} ${other.name}`] : [])),
      );
      expect(overlaps).toEqual([]);
    }
  });

  test('keeps its fields in the tag tree, as fields', () => {
    const tagged = pages.reduce((sum, page) => sum + page.formElements, 0);
    const widgets = pages.reduce((sum, page) => sum + page.widgets.length, 0);
    expect(tagged).toBe(widgets);
  });

  test('is the same bytes each time and from either engine', async () => {
    expect(Buffer.from(await fillable(ostrelSheet)).equals(bytes)).toBe(true);
    expect(Buffer.from(await fillable(ostrelSheet, 'wasm')).equals(bytes)).toBe(true);
  }, 60_000);

  test('leaves the sheet for paper without a field or a mark', async () => {
    const paper = await PDF.load(await print(ostrelSheet));
    expect(paper.getForm()?.getFields() ?? []).toEqual([]);
    expect(paper.getAttachments().has('record.json')).toBe(false);
  });
});

function overlap(a: readonly number[], b: readonly number[]): boolean {
  const [left = 0, bottom = 0, right = 0, top = 0] = a;
  const [otherLeft = 0, otherBottom = 0, otherRight = 0, otherTop = 0] = b;
  const slack = 0.1;
  return (
    left < otherRight - slack && otherLeft < right - slack && bottom < otherTop - slack && otherBottom < top - slack
  );
}

describe.each(['v4-major', 'h9-rebuild'])('the sample %s', (name) => {
  test('has a name of its own for every field, and each on the page', async () => {
    const sheet = await sampleSheet(name);
    const names = nameFields(sheet).fields.map((field) => field.name);
    expect(new Set(names).size).toBe(names.length);
    const shown = await readFormPages(await fillable(sheet));
    const widgets = new Set(shown.flatMap((page) => page.widgets.map((widget) => widget.name)));
    expect(names.filter((each) => !widgets.has(each))).toEqual([]);
  }, 60_000);

  test('names its fields alike in every language', async () => {
    const sheet = await sampleSheet(name);
    const german = nameFields({ ...sheet, language: 'de' }).fields;
    expect(german.map((field) => field.name)).toEqual(nameFields(sheet).fields.map((field) => field.name));
  });
});
