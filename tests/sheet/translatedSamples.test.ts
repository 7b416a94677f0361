import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { buildSheet, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import type { SheetLanguage } from '../../server/src/core/sheet/sheet';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';

const ROOT = resolve('sample-procedures');

async function sampleView(name: string): Promise<ProcedureView> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  const uri = uriOfPath(join(ROOT, 'procedures', `${name}.procedure.yaml`));
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  const procedure = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error(`There is no sample ${name}`);
  return procedure;
}

/** What each build of the sample lacks in a language, each text once. */
function missing(procedure: ProcedureView, language: SheetLanguage): string[] {
  const texts = listSheetBuilds(procedure).flatMap(({ id }) => {
    const picked = pickBuild(procedure.space, id);
    if (picked.kind === 'refused') throw new Error(`${id} is no build`);
    const sheet = buildSheet(procedure, picked, { findings: [], settings: DEFAULT_SETTINGS, language, paper: 'a4' });
    return (sheet.untranslated ?? []).map(({ text }) => text);
  });
  return [...new Set(texts)];
}

test.each(['de', 'es'] as const)(
  'the rebuild of the Ostrel V4 is whole in %s for every build',
  async (language) => {
    expect(missing(await sampleView('v4-major'), language)).toEqual([]);
  },
  60_000,
);

test('the rebuild of the Brendahl H9 is not translated, and its sheet says so', async () => {
  expect(missing(await sampleView('h9-rebuild'), 'es').length).toBeGreaterThan(100);
}, 60_000);
