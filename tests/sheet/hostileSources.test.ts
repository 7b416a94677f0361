import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { settingsFor } from '../../server/src/core/analysis/settings';
import { type SourceText, Workspace } from '../../server/src/core/analysis/workspace';
import { pickBuild } from '../../server/src/core/builds';
import { buildSheet, listSheetBuilds } from '../../server/src/core/sheet/buildSheet';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { readPdfAssets } from '../../server/src/node/pdf/assets';
import { preparePrintJob } from '../../server/src/pdf/printJob';

const ROOT = 'file:///work/shop';
const SECRET = '<svg xmlns="http://www.w3.org/2000/svg"><text>SECRET</text></svg>';

/** A disk on which every path that is asked for holds a secret, but those of the folder. */
class WatchedDisk {
  readonly asked: string[] = [];

  constructor(readonly files: Readonly<Record<string, string>>) {}

  async read(uri: string): Promise<SourceText> {
    this.asked.push(uri);
    const text = this.files[uri.slice(ROOT.length + 1)];
    if (uri.startsWith(`${ROOT}/`)) return text === undefined ? { is: 'missing' } : { is: 'text', text };
    return { is: 'text', text: SECRET };
  }
}

async function sheetWith(path: string): Promise<{ sheet: Sheet; asked: readonly string[] }> {
  const disk = new WatchedDisk({
    'procedures/a.procedure.yaml': `procedure: OP-1\nfamily: ../families/a.family.yaml\nfigures:\n  ring: { file: ${JSON.stringify(path)}, alt: A ring }\nphases:\n  - phase: work\n    title: Work\n    steps:\n      - step: look\n        title: Look\n        figure: ring\n        do:\n          - do: Look at it.\n`,
    'families/a.family.yaml': 'family: a\nname: A\nvariants:\n  a-1: { name: A-1 }\n',
  });
  const workspace = new Workspace([ROOT]);
  const uri = `${ROOT}/procedures/a.procedure.yaml`;
  await workspace.loadLinked(uri, disk);
  const document = workspace.snapshot.document(uri);
  const procedure = document && ProcedureView.of(workspace.snapshot, document);
  const picked = procedure && pickBuild(procedure.space, listSheetBuilds(procedure)[0]?.id ?? '');
  if (procedure === undefined || picked?.kind !== 'picked') throw new Error('The example has no build');
  const settings = settingsFor(workspace.snapshot, uri);
  const sheet = buildSheet(procedure, picked, { findings: [], settings, language: 'en', paper: 'a4' });
  return { sheet, asked: disk.asked };
}

test.each([
  '../../etc/passwd',
  '../../../../../../etc/secret.svg',
  '/etc/secret.svg',
  'file:///etc/secret.svg',
  'https://example.invalid/secret.svg',
  '..\\..\\secret.svg',
  'C:\\secret.svg',
  './../../shop2/secret.svg',
])('a figure at %s is neither read nor fetched, printed nor attached', async (path) => {
  const { sheet, asked } = await sheetWith(path);
  for (const uri of asked) expect(uri.startsWith(`${ROOT}/`), uri).toBe(true);
  const job = preparePrintJob(sheet, new Map(), readPdfAssets().fonts);
  if ('problem' in job) throw new Error(JSON.stringify(job.problem));
  const printed = [...job.values()].map((bytes) => Buffer.from(bytes).toString('utf8')).join('\n');
  expect(printed).toContain('A ring');
  for (const text of [printed, sheetToHtml(sheet, { mode: 'file' }), JSON.stringify(sheet)])
    expect(text).not.toContain('SECRET');
  expect(sheet.proof?.builtFrom.map(({ name }) => name)).toEqual([
    'families/a.family.yaml',
    'procedures/a.procedure.yaml',
  ]);
});

test('a figure in the folder is', async () => {
  const { asked } = await sheetWith('../figures/ring.svg');
  expect(asked).toContain(`${ROOT}/figures/ring.svg`);
});
