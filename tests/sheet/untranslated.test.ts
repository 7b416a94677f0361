import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS, type Settings } from '../../server/src/core/analysis/settings';
import { formsOf } from '../../server/src/core/sheet/forms';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import { labelsFor } from '../../server/src/core/sheet/labels';
import type { Sheet, SheetLanguage } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { filesWith, procedureWith, sheetOfFiles, textOf } from './fixtures/bench';
import { print } from './fixtures/printPdf';

const WORK = `phases:
  - phase: { text: Work, es: Trabajo }
    steps:
      - step: take-off
        title: { text: Take off the cover, es: Desmontaje de la tapa }
        do:
          - { remove: cover, caution: Wear gloves. }
          - { say: Look at <cover>. }
      - step: put-back
        title: Put back the cover
        do:
          - { install: cover, caution: Wear gloves. }
          - { install: cover-screw }
`;

/** The small unit in which the cover has a Spanish name and everything else has none. */
function files(work = WORK): Record<string, string> {
  const all = filesWith(procedureWith(work));
  const family = all['families/pellow-k2.family.yaml']?.replace(
    '{ name: cover,',
    '{ name: { text: cover, es: la tapa },',
  );
  return { ...all, 'families/pellow-k2.family.yaml': family ?? '' };
}

const sheetIn = (language: SheetLanguage, work = WORK, settings: Settings = DEFAULT_SETTINGS): Promise<Sheet> =>
  sheetOfFiles(files(work), { settings, more: { language } });

const listed = (sheet: Sheet): string[] =>
  (sheet.untranslated ?? []).map(({ kind, text, at }) =>
    [kind, text, ...at.map(({ step }) => String(step))].join(' | '),
  );

describe('what has no translation', () => {
  test('is listed once, names first, and texts of the steps with their steps', async () => {
    const all = listed(await sheetIn('es'));
    expect(all).toContain('part | cover screw');
    expect(all.filter((line) => line.includes('Wear gloves.'))).toEqual(['text | Wear gloves. | 1 | 2']);
    expect(all).toContain('text | Put back the cover | 2');
    expect(all).toContain('text | Look at the cover. | 1');
    const kinds = all.map((line) => line.split(' | ')[0]);
    expect(kinds.lastIndexOf('part')).toBeLessThan(kinds.indexOf('text'));
  });

  test('is not what has one, nor what the sheet does not print', async () => {
    const all = listed(await sheetIn('es'));
    expect(all.filter((line) => /\| (?:cover|Work|Take off the cover)(?: \||$)/u.test(line))).toEqual([]);
    expect(all.filter((line) => line.includes('stretch bolt'))).toEqual([]);
  });

  test('is nothing in the language that the documents are written in', async () => {
    expect((await sheetIn('en')).untranslated).toBeUndefined();
  });

  test('depends on the language that the settings say the documents are written in', async () => {
    const settings: Settings = { ...DEFAULT_SETTINGS, writtenIn: 'es' };
    expect((await sheetIn('es', WORK, settings)).untranslated).toBeUndefined();
    expect(listed(await sheetIn('en', WORK, settings))).toContain('part | cover screw');
  });

  test('has words: a number or a symbol reads alike everywhere', async () => {
    const work = WORK.replace('Look at <cover>.', '"12"');
    expect(listed(await sheetIn('es', work)).filter((line) => line.includes('| 12'))).toEqual([]);
  });
});

describe('words of another language', () => {
  test('stay whole, with the names that they mention, and say which language they are', async () => {
    const sheet = await sheetIn('es');
    const [remove, look] = sheet.phases[0]?.steps[0]?.instructions ?? [];
    expect(textOf(remove?.text ?? [])).toBe('Desmonte la tapa.');
    expect(textOf(look?.text ?? [])).toBe('Look at the cover.');
    expect(look?.text.map(({ lang }) => lang)).toEqual(['en', 'en', 'en']);
  });

  test('are names that a sentence does not inflect', async () => {
    const sheet = await sheetIn('es');
    const screws = sheet.phases[0]?.steps[1]?.instructions[1]?.text ?? [];
    expect(textOf(screws)).toBe('Monte los cuatro cover screw.');
    expect(screws.filter(({ lang }) => lang === 'en').map(({ text }) => text)).toEqual(['cover screw']);
  });

  test('are not inflected in an English or a German sentence either', async () => {
    const screws = async (language: SheetLanguage, writtenIn: SheetLanguage) => {
      const sheet = await sheetIn(language, WORK, { ...DEFAULT_SETTINGS, writtenIn });
      return sheet.phases[0]?.steps[1]?.instructions[1]?.text ?? [];
    };
    expect(textOf(await screws('en', 'de'))).toBe('Install the four cover screw.');
    expect((await screws('en', 'de')).map(({ lang }) => lang)).toContain('de');
    expect(textOf(await screws('de', 'en'))).toBe('4 × cover screw einbauen.');
    expect((await screws('de', 'en')).map(({ lang }) => lang)).toContain('en');
  });

  test('are marked in the page, and only they', async () => {
    const html = sheetToHtml(await sheetIn('es'), { mode: 'file' });
    expect(html).toContain('<html lang="es">');
    expect(html).toContain('<span lang="en">Wear gloves.</span>');
    expect(html).toContain('<span class="step-title" lang="en">Put back the cover</span>');
    expect(html).toContain('<span class="step-title">Desmontaje de la tapa</span>');
    expect(sheetToHtml(await sheetIn('en'), { mode: 'file' })).not.toContain('<span lang');
  });
});

test('words of another language are marked in the printed page, and only they', async () => {
  const languagesIn = async (sheet: Sheet) =>
    new Set(
      [
        ...Buffer.from(await print(sheet))
          .toString('latin1')
          .matchAll(/\/Lang \((\w+)\)/gu),
      ].map((one) => one[1]),
    );
  expect(await languagesIn(await sheetIn('es'))).toEqual(new Set(['es', 'en']));
  expect(await languagesIn(await sheetIn('en'))).toEqual(new Set(['en']));
  await closePdfEngines();
});

describe('the list on the sheet', () => {
  test('says how many there are and puts the texts of one step into one row', async () => {
    const sheet = await sheetIn('es');
    const form = formsOf(sheet, labelsFor('es')).record.find(({ name }) => name === 'untranslated');
    expect(form?.blocks[0]).toEqual({
      kind: 'note',
      text: `${sheet.untranslated?.length} textos no están traducidos al idioma de esta hoja y se imprimen como están en sus documentos.`,
    });
    const rows = form?.blocks[1]?.kind === 'table' ? form.blocks[1].rows : [];
    const first = rows.find(([, steps]) => steps?.kind === 'steps' && steps.at.map(({ step }) => step).join() === '1');
    expect(first?.[2]).toEqual({ kind: 'text', texts: [{ text: 'Look at the cover.', strong: false, lang: 'en' }] });
  });

  test('is not there where all is translated', async () => {
    const names = formsOf(await sheetIn('en'), labelsFor('en')).record.map(({ name }) => name);
    expect(names).not.toContain('untranslated');
  });
});
