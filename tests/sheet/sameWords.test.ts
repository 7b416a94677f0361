import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../server/src/core/analysis/settings';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import { labelsFor } from '../../server/src/core/sheet/labels';
import type { Sheet, SheetLanguage } from '../../server/src/core/sheet/sheet';
import { documentsBelow, NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { closePdfEngines, renderPdf } from '../../server/src/node/pdf/pdfEngine';
import { TODAY } from '../support/checkText';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { readBody } from './fixtures/readBody';

afterAll(closePdfEngines);

const ROOT = resolve('sample-procedures');
const procedures = documentsBelow(ROOT).filter((path) => path.endsWith('.procedure.yaml') && !path.includes('faulty'));

/** The sheets of every build of a sample. */
async function sheetsOf(path: string, language: SheetLanguage = 'en'): Promise<Sheet[]> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  const uri = uriOfPath(path);
  await workspace.loadLinked(uri, new NodeFiles());
  const { snapshot } = workspace;
  const document = snapshot.document(uri);
  const procedure = document === undefined ? undefined : ProcedureView.of(snapshot, document);
  if (document === undefined || procedure === undefined) throw new Error(`${path} is no procedure`);
  const { findings } = checkDocument(snapshot, document, { today: TODAY });
  return listSheetBuilds(procedure).map(({ id }) => {
    const picked = pickBuild(procedure.space, id);
    if (picked.kind === 'refused') throw new Error(`${path} has no build ${id}`);
    const settings = settingsFor(snapshot, uri);
    return buildSheet(procedure, picked, { findings, settings, language, paper: settings.paper });
  });
}

/** The words of the body of the HTML file in their order, without blanks and hyphens: lines break where they like. */
function wordsOfHtml(html: string): string {
  const body = html
    .slice(html.indexOf('<body'))
    // On paper these stand in the running head and foot.
    .replace(/<p class="band.*?<\/p>/s, '')
    .replace(/\. <\/strong>[^<]*(?=<\/p><\/footer>)/, '')
    .replace(/<svg.*?<\/svg>/gs, '')
    .replace(/<img src="data:image\/svg\+xml;base64,([^"]*)"/g, (_, drawing: string) => `${wordsIn(drawing)}<img`);
  const text = body
    .replace(/<[^>]*>/g, ' ')
    .replace(/&(amp|lt|gt|quot|#39);/g, (_, name: string) => ENTITIES[name] ?? '');
  return bare(text);
}

/** A drawing has words too, on the screen as on paper. */
function wordsIn(base64: string): string {
  const svg = Buffer.from(base64, 'base64').toString('utf8');
  return [...svg.matchAll(/<text[^>]*>(.*?)<\/text>/gs)].map(([, text]) => text).join(' ');
}

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', '#39': "'" };

function bare(text: string): string {
  return text.replace(/[\s\u00A0\u200B\u00AD-]+/g, '');
}

/** The first place at which two texts differ, with what is around it; empty where they are the same. */
function firstDifference(one: string, other: string): string {
  let at = 0;
  while (at < one.length && one[at] === other[at]) at += 1;
  if (at === one.length && at === other.length) return '';
  const around = (text: string) => `${text.slice(Math.max(0, at - 60), at)}⟦${text.slice(at, at + 80)}⟧`;
  return `on the screen: ${around(one)}\non paper:      ${around(other)}`;
}

async function assertSameWords(sheet: Sheet): Promise<void> {
  const printed = await renderPdf(sheet, new Map());
  if ('problem' in printed) throw new Error(JSON.stringify(printed.problem));
  const labels = labelsFor(sheet.language);
  const paper = bare((await readBody(printed)).join(' '));
  const screen = wordsOfHtml(sheetToHtml(sheet, { mode: 'file' }));
  expect(screen.length).toBeGreaterThan(1000);
  expect(screen).toContain(bare(labels.safety));
  expect(firstDifference(screen, paper)).toBe('');
}

describe('screen and paper say the same words in the same order', () => {
  test('a sheet with every kind of block', () => assertSameWords(ostrelSheet));

  describe.each(procedures.map((path) => [path.slice(ROOT.length + 1), path] as const))('%s', async (_, path) => {
    const sheets = await sheetsOf(path);
    test.each(sheets.map((sheet) => [sheet.header.buildId, sheet] as const))('%s', (_id, sheet) =>
      assertSameWords(sheet),
    );
  });

  test.each(['de', 'es'] as const)('in the language %s', async (language) => {
    const [sheet] = await sheetsOf(join(ROOT, 'procedures/v4-wheel-44.procedure.yaml'), language);
    if (sheet === undefined) throw new Error('no sheet');
    await assertSameWords(sheet);
  });

  test('a word that stands in one of them alone is seen', () => {
    expect(firstDifference('turn clockwise', 'turn clock')).not.toBe('');
    expect(firstDifference('the same', 'the same')).toBe('');
    expect(readFileSync(procedures[0] ?? '', 'utf8')).toContain('procedure:');
  });
});
