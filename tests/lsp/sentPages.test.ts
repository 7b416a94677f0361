import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../server/src/core/analysis/settings';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import { sheetToHtml, sheetToPage } from '../../server/src/core/sheet/html';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { SentPages } from '../../server/src/lsp/sentPages';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';
import { PageReader } from '../support/pageReader';
import { seededRandom } from '../support/seededRandom';
import { randomEdit } from '../support/typing';

const ROOT = uriOfPath(resolve('sample-procedures'));
const PATH = resolve('sample-procedures/procedures/v4-wheel-44.procedure.yaml');
const URI = uriOfPath(PATH);
const TEXT = readFileSync(PATH, 'utf8');
const EDITS = 25;

async function openWorkspace(): Promise<Workspace> {
  const workspace = new Workspace([ROOT]);
  await workspace.loadLinked(URI, new NodeFiles());
  return workspace;
}

function sheetOf(workspace: Workspace, text: string): Sheet | undefined {
  workspace.set(URI, { is: 'text', text });
  const { snapshot } = workspace;
  const document = snapshot.document(URI);
  const procedure = document === undefined ? undefined : ProcedureView.of(snapshot, document);
  if (document === undefined || procedure === undefined) return undefined;
  const { findings } = checkDocument(snapshot, document, { today: TODAY });
  const picked = pickBuild(procedure.space, listSheetBuilds(procedure)[0]?.id ?? '');
  if (picked.kind === 'refused') return undefined;
  const settings = settingsFor(snapshot, URI);
  return buildSheet(procedure, picked, { findings, settings, language: 'en', paper: 'a4' });
}

/** The body as it is printed with nothing remembered: where pictures come from is asked, and that is never remembered. */
function freshBody(sheet: Sheet): string {
  const html = sheetToHtml(sheet, { mode: 'preview', figureUrl: () => undefined });
  return (/<body[^>]*>(.*)<\/body>/s.exec(html)?.[1] ?? '').replace(/ data-source-\w+="[^"]*"/g, '');
}

test('after any edits a reader has the page that a fresh printing gives', async () => {
  const seed = Number(process.env.SEED ?? 20261125);
  console.log(`seed ${seed}`);
  const random = seededRandom(seed);
  const workspace = await openWorkspace();
  const sent = new SentPages();
  const reader = new PageReader();
  let text = TEXT;
  for (let i = 0; i < EDITS; i++) {
    text = random() < 0.1 ? TEXT : randomEdit(text, random);
    const sheet = sheetOf(workspace, text);
    const alone = sheetOf(await openWorkspace(), text);
    expect(sheet).toEqual(alone);
    if (sheet === undefined || alone === undefined) continue;
    const page = sheetToPage(sheet);
    reader.take(sent.patch(URI, page, reader.version));
    expect(reader.body() === freshBody(alone), `edit ${i} of seed ${seed}`).toBe(true);
    expect(reader.sources).toEqual(page.sources);
  }
});
