import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../../server/src/core/analysis/settings';
import { Workspace } from '../../../server/src/core/analysis/workspace';
import { pickBuild } from '../../../server/src/core/builds';
import { buildSheet, listSheetBuilds } from '../../../server/src/core/sheet/buildSheet';
import { sheetText } from './sheetText';

const FOLDER = join(import.meta.dirname, '../../../sample-procedures');
const ROOT = pathToFileURL(FOLDER).href;

const procedures = readdirSync(join(FOLDER, 'procedures'))
  .filter((name) => name.endsWith('.procedure.yaml'))
  .sort();

async function openSample(name: string): Promise<ProcedureView> {
  const workspace = new Workspace([ROOT]);
  const uri = `${ROOT}/procedures/${name}`;
  await workspace.loadLinked(uri, {
    read: async (file) => {
      const path = fileURLToPath(file);
      return existsSync(path) ? { is: 'text', text: readFileSync(path, 'utf8') } : { is: 'missing' };
    },
  });
  const document = workspace.snapshot.document(uri);
  const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (view === undefined) throw new Error(`${name} is no procedure`);
  return view;
}

test('there are samples to print', () => {
  expect(procedures.length).toBeGreaterThan(2);
});

/** Every sample in English, and the one that is translated in each language. */
const SHEETS = procedures.flatMap((name) =>
  (name.startsWith('v4-major') ? (['en', 'de', 'es'] as const) : (['en'] as const)).map(
    (language) => [name, language] as const,
  ),
);

test.each(SHEETS)('the fullest build of %s reads as it was reviewed (%s)', async (name, language) => {
  const view = await openSample(name);
  const picked = pickBuild(view.space, listSheetBuilds(view).at(-1)?.id ?? '');
  if (picked.kind !== 'picked') throw new Error('The listed build cannot be picked');
  const settings = settingsFor(view.snapshot, view.document.uri);
  const sheet = buildSheet(view, picked, { findings: [], settings, language, paper: 'a4' });
  const suffix = language === 'en' ? '' : `.${language}`;
  await expect(sheetText(sheet)).toMatchFileSnapshot(`${name.replace('.procedure.yaml', '')}${suffix}.txt`);
});
