import { ProcedureView } from '../../src/core/analysis/procedureView';
import { settingsFor } from '../../src/core/analysis/settings';
import type { Workspace } from '../../src/core/analysis/workspace';
import { pickBuild } from '../../src/core/builds';
import { checkDocument } from '../../src/core/rules/checkDocument';
import { buildSheet, listSheetBuilds } from '../../src/core/sheet/buildSheet';
import { sheetToPage } from '../../src/core/sheet/html';
import { SentPages } from '../../src/lsp/sentPages';
import { median } from './measure';
import { procedureOf, SAMPLE_URI, TODAY, workspaceOfSample } from './procedures';

/** Steps, and how often a key is pressed. */
const SIZES = [
  [60, 40],
  [300, 40],
  [2000, 15],
] as const;
const WARM = 10;

/** In the middle of the procedure, so that there are steps above and below. */
const KEYS = [
  ['typing in a title', (text: string, round: number) => inTitle(text, 'x'.repeat((round % 7) + 1))],
  ['a changed torque', (text: string, round: number) => withTorque(text, (round % 7) + 4)],
  ['a step more, or less again', (text: string, round: number) => (round % 2 === 0 ? text : withStep(text, round))],
  ['a blank line at the top', (text: string, round: number) => '\n'.repeat((round % 7) + 1) + text],
] as const;

const COLUMNS = ['check', 'sheet', 'pieces', 'kB'] as const;
type Times = Readonly<Record<(typeof COLUMNS)[number], number>>;

/** From a changed text to what a preview is sent of its sheet, with all that was remembered, as in an editor. */
export async function sheetKeystrokes(): Promise<void> {
  console.log('\na preview after a key, CPU ms (medians): checking, building the sheet, its pieces; and kB sent');
  for (const [steps, rounds] of SIZES) {
    const workspace = await workspaceOfSample();
    const text = procedureOf(steps);
    for (const [name, edit] of KEYS) {
      const preview = new Preview(workspace);
      const all = Array.from({ length: WARM + rounds }, (_, round) => preview.press(edit(text, round))).slice(WARM);
      const columns = COLUMNS.map(
        (key) =>
          `${key} ${median(all.map((run) => run[key]))
            .toFixed(1)
            .padStart(6)}`,
      );
      console.log(`${`${steps} steps, ${name}`.padEnd(40)} ${columns.join('   ')}`);
    }
  }
}

/** One reader of the sheet, who is sent what has changed. */
class Preview {
  readonly #sent = new SentPages();
  #version: number | undefined;

  constructor(readonly workspace: Workspace) {}

  press(text: string): Times {
    const { workspace } = this;
    workspace.set(SAMPLE_URI, { is: 'text', text });
    const { snapshot } = workspace;
    const document = snapshot.document(SAMPLE_URI);
    if (document === undefined) throw new Error('no document');
    const start = cpu();
    const { findings } = checkDocument(snapshot, document, { today: TODAY });
    const checked = cpu();
    const procedure = ProcedureView.of(snapshot, document);
    if (procedure === undefined) throw new Error('no procedure');
    const picked = pickBuild(procedure.space, listSheetBuilds(procedure)[0]?.id ?? '');
    if (picked.kind === 'refused') throw new Error('no build');
    const settings = settingsFor(snapshot, SAMPLE_URI);
    const sheet = buildSheet(procedure, picked, { findings, settings, language: 'en', paper: 'a4' });
    const built = cpu();
    const patch = this.#sent.patch(SAMPLE_URI, sheetToPage(sheet), this.#version);
    const message = JSON.stringify(patch);
    const sent = cpu();
    this.#version = patch.version;
    return { check: checked - start, sheet: built - checked, pieces: sent - built, kB: message.length / 1000 };
  }
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

function withTorque(text: string, value: number): string {
  const middle = text.length / 2;
  return text.slice(0, middle) + text.slice(middle).replace(/(?<=\n +torque: )[\d.]+/, String(value));
}

function withStep(text: string, round: number): string {
  const middle = text.indexOf('\n      - step: ', text.length / 2);
  const step = `\n      - step: one-more-${round}\n        title: One more\n        do:\n          - say: Look at it.`;
  return text.slice(0, middle) + step + text.slice(middle);
}
