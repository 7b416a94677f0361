import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { buildsOf, pickBuild } from '../../server/src/core/builds';
import { buildChart } from '../../server/src/core/chart/buildChart';
import { chartToHtml } from '../../server/src/core/chart/chartHtml';
import { buildSheet } from '../../server/src/core/sheet/buildSheet';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { repoPath } from '../repo/repoFiles';

const MOST_BUILDS = 3;
const SAMPLES = ['procedures', 'faulty'].flatMap((folder) =>
  readdirSync(repoPath(`sample-procedures/${folder}`))
    .filter((name) => name.endsWith('.procedure.yaml'))
    .map((name) => `sample-procedures/${folder}/${name}`),
);

async function procedureOf(path: string): Promise<ProcedureView> {
  const workspace = new Workspace([uriOfPath(repoPath('sample-procedures'))]);
  const uri = uriOfPath(repoPath(path));
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  const procedure = document && ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error(`No procedure in ${path}`);
  return procedure;
}

/** Everything that a build of a sample is drawn from. */
async function chartsOf(path: string) {
  const procedure = await procedureOf(path);
  const { space } = procedure;
  return buildsOf(space.everything, space, MOST_BUILDS).flatMap(({ id }) => {
    const picked = pickBuild(space, id);
    const chart = picked.kind === 'picked' ? buildChart(procedure, picked, []) : undefined;
    return picked.kind === 'picked' && chart !== undefined ? [{ procedure, picked, chart }] : [];
  });
}

describe.each(SAMPLES)('%s', (path) => {
  test('is drawn with the steps of its sheet and a place of its own for everything', async () => {
    const charts = await chartsOf(path);
    expect(charts).not.toEqual([]);
    for (const { procedure, picked, chart } of charts) {
      const options = { findings: [], settings: DEFAULT_SETTINGS, language: 'en', paper: 'a4' } as const;
      const sheet = buildSheet(procedure, picked, options);
      const steps = sheet.phases.flatMap((phase) => phase.steps.map(({ number, id }) => `${number} ${id}`));
      expect(chart.steps.map(({ number, id }) => `${number} ${id}`)).toEqual(steps);
      const ids = [...chartToHtml(chart, { mode: 'preview' }).matchAll(/ id="([^"]*)"/g)].map((match) => match[1]);
      expect(new Set(ids).size).toBe(ids.length);
    }
  });
});

test.each(SAMPLES.filter((path) => path.includes('/procedures/')))('%s ends with its unit whole', async (path) => {
  for (const { chart } of await chartsOf(path)) {
    const last = chart.rows.map(
      (row) => row.cells.findLast((cell) => cell.beats.length > 0)?.beats.at(-1)?.standing ?? row.start,
    );
    // What is not in place at the end is gone for good, or was there for the work alone.
    const kinds = new Set(last.map((standing) => standing.kind));
    expect([...kinds].filter((kind) => !['torqued', 'fitted', 'gone', 'absent'].includes(kind))).toEqual([]);
  }
});
