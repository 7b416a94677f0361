// The scenarios for an editor that is nothing but a page. They are those of the other editor where a writer sees no
// difference; what is printed is held against the command line, byte for byte.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fromRoot } from '../../server/dev/tree.mjs';
import { expected } from './expected.mjs';
import { scenarios as all } from './scenarios.mjs';
import { writingScenarios } from './writingScenarios.mjs';

const sharedInText = [
  'a finding stands in the text and in the Problems view',
  'the quick fix mends the text and the finding goes',
];

const sharedWithSheet = [
  'the step sheet shows the torque beside the text',
  'the build of the sheet stands in the status bar',
  'hovering over a torque shows how it is worked out',
  'the step sheet follows the cursor',
  'a click on a step goes to its source',
  'the walk takes the place of the sheet and goes back to it',
  'the step sheet is printed to a PDF',
];

/** What the mounted folder has of the samples: the rest would only be checked behind the scenarios. */
export function isInFolder(path) {
  return !/^faulty\/./.test(path) || path === expected.faulty.file || /\/wexley(?:-w1)?\.\w+\.yaml$/.test(path);
}

export const scenarios = [
  ...sharedInText.map(byName),
  ...writingScenarios,
  ...sharedWithSheet.map(byName),
  {
    name: 'the printed sheet has the bytes that the command line prints',
    async run({ workbench, folder }) {
      const { file, pdf, buildId } = expected.sound;
      const target = join(folder, 'from-the-command-line.pdf');
      const args = [fromRoot('server/dist/cli.js'), 'sheet', join(folder, file), '--build', buildId, '--out', target];
      const run = spawnSync(process.execPath, args, { encoding: 'utf8' });
      assert.equal(run.status, 0, run.stderr);
      assert.ok(readFileSync(target).equals(await workbench.written(folder, pdf)), 'the two files differ');
    },
  },
  byName('the step sheet is printed as a form, the one of the command line'),
];

function byName(name) {
  const scenario = all.find((one) => one.name === name);
  assert.ok(scenario !== undefined, `there is no scenario called: ${name}`);
  return scenario;
}
