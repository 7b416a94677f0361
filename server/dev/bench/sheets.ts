import { ProcedureView } from '../../src/core/analysis/procedureView';
import { settingsFor } from '../../src/core/analysis/settings';
import type { Workspace } from '../../src/core/analysis/workspace';
import { pickBuild } from '../../src/core/builds';
import { checkDocument } from '../../src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../src/core/sheet/buildSheet';
import { sheetToHtml } from '../../src/core/sheet/html';
import { median } from './measure';
import { procedureOf, SAMPLE_URI, TODAY, workspaceOfSample } from './procedures';

const STEPS = 300;
const ROUNDS = 40;
const WARM = 10;

/** From a changed text to the page of its sheet, with everything else remembered, as in an editor. CPU milliseconds. */
export async function sheetKeystrokes(): Promise<void> {
  console.log(`\nthe sheet of ${STEPS} steps after a keystroke, CPU ms (median of ${ROUNDS})`);
  const workspace = await workspaceOfSample();
  const text = procedureOf(STEPS);
  for (const [name, edit] of [
    ['typing in a title', (round: number) => inTitle(text, 'x'.repeat((round % 7) + 1))],
    ['a changed torque', (round: number) => text.replace(/torque: \d+/, `torque: ${(round % 7) + 4}`)],
    ['nothing changed but a blank line at the top', (round: number) => '\n'.repeat((round % 7) + 1) + text],
  ] as const) {
    const runs = Array.from({ length: WARM + ROUNDS }, (_, round) => pressed(workspace, edit(round))).slice(WARM);
    const columns = (['check', 'sheet', 'html'] as const).map(
      (key) =>
        `${key} ${median(runs.map((run) => run[key]))
          .toFixed(1)
          .padStart(6)}`,
    );
    console.log(`${name.padEnd(52)} ${columns.join('   ')}`);
  }
}

function pressed(workspace: Workspace, text: string) {
  workspace.set(SAMPLE_URI, { is: 'text', text });
  const { snapshot } = workspace;
  const document = snapshot.document(SAMPLE_URI);
  if (document === undefined) throw new Error('no document');
  const times = [cpu()];
  const { findings } = checkDocument(snapshot, document, { today: TODAY });
  times.push(cpu());
  const procedure = ProcedureView.of(snapshot, document);
  if (procedure === undefined) throw new Error('no procedure');
  const picked = pickBuild(procedure.space, listSheetBuilds(procedure)[0]?.id ?? '');
  if (picked.kind === 'refused') throw new Error('no build');
  const settings = settingsFor(snapshot, SAMPLE_URI);
  const sheet = buildSheet(procedure, picked, { findings, settings, language: 'en', paper: 'a4' });
  times.push(cpu());
  sheetToHtml(sheet, { mode: 'preview' });
  times.push(cpu());
  const [start = 0, checked = 0, built = 0, printed = 0] = times;
  return { check: checked - start, sheet: built - checked, html: printed - built };
}

function cpu(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function inTitle(text: string, added: string): string {
  const middle = text.indexOf('title: ', text.length / 2);
  const end = text.indexOf('\n', middle);
  return text.slice(0, end) + added + text.slice(end);
}
