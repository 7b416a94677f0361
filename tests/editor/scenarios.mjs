// What a technical writer does in the editor, told once through in one window. Each scenario starts where the last ended.
import assert from 'node:assert/strict';
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import process from 'node:process';
import { fromRoot } from '../../server/dev/tree.mjs';
import { beginningScenarios } from './beginningScenarios.mjs';
import { expected } from './expected.mjs';
import { until } from './workbench.mjs';
import { writingScenarios } from './writingScenarios.mjs';

export const scenarios = [
  {
    name: 'a finding stands in the text and in the Problems view',
    async run({ workbench, folder }) {
      await workbench.open(folder, expected.faulty.file);
      await workbench.goToProblem(expected.faulty.message);
      await workbench.squiggles(expected.faulty.severity).first().waitFor();
    },
  },
  {
    name: 'the words of a procedure are coloured',
    async run({ workbench }) {
      const verb = workbench
        .text()
        .locator('span', { hasText: new RegExp(`^\\s*${expected.faulty.verb}$`) })
        .first();
      const plain = workbench
        .text()
        .locator('span', { hasText: /^\s*step$/ })
        .first();
      // Colours come some moments after the text, when the grammar has been read.
      await until('a verb in a colour of its own', async () => (await colourOf(verb)) !== (await colourOf(plain)));
    },
  },
  {
    name: 'the quick fix mends the text and the finding goes',
    async run({ workbench, folder }) {
      await workbench.quickFix(expected.faulty.fix);
      await workbench.text().filter({ hasText: expected.faulty.mended }).first().waitFor();
      // The view is still filtered by the words of the finding, and says so when nothing is left.
      await workbench.noProblems().waitFor();
      assert.equal(await workbench.squiggles(expected.faulty.severity).count(), 0);
      await workbench.save();
      const { file, mended } = expected.faulty;
      await until('the mended text in the file', async () => mended.test(await workbench.written(folder, file)));
    },
  },
  ...writingScenarios,
  {
    name: 'the step sheet shows the torque beside the text',
    async run({ workbench, folder }) {
      await workbench.open(folder, expected.sound.file);
      await workbench.command('Witnessmark: Open the step sheet beside the text');
      await workbench.webview().locator('body', { hasText: expected.sound.torque }).waitFor();
    },
  },
  {
    name: 'the build of the sheet stands in the status bar',
    async run({ workbench }) {
      await workbench.statusItem(expected.sound.build).waitFor();
    },
  },
  {
    name: 'hovering over a torque shows how it is worked out',
    async run({ workbench, folder }) {
      const { step, rows } = expected.sound.worked;
      await workbench.tab(basename(expected.sound.file)).click();
      await workbench.focused();
      await workbench.goToLine(lineOf(folder, step, /^torque: /));
      await workbench.lineEnd();
      const hover = await workbench.hover();
      for (const row of rows) await hover.locator('tr', { hasText: row }).first().waitFor();
      // Below the table, as code; how the editor draws code is its own business.
      await hover.filter({ hasText: /A_s\s=.*14\.2\smm²/ }).waitFor();
      await workbench.page.keyboard.press('Escape');
    },
  },
  {
    name: 'the step sheet follows the cursor',
    async run({ workbench, folder }) {
      const { step, title } = expected.sound.caretIn;
      await workbench.goToLine(lineOf(folder, step) + 1);
      const current = workbench.webview().locator('[aria-current="step"]', { hasText: title });
      await current.waitFor();
      await until('the step to be scrolled to', () => isSeen(current));
    },
  },
  {
    name: 'a click on a step goes to its source',
    async run({ workbench, folder }) {
      const { step, title } = expected.sound.clicked;
      const line = lineOf(folder, step);
      assert.ok(!(await workbench.caretLine()).startsWith(`Ln ${line},`), 'the caret is there already');
      await workbench.webview().getByText(title, { exact: true }).first().click();
      await workbench.statusItem(new RegExp(`^Ln ${line}, `)).waitFor();
      // The writer goes on typing there, so the text has the focus too.
      await workbench.focused();
    },
  },
  {
    name: 'the printed pages take the place of the sheet and go back to it',
    async run({ workbench, folder }) {
      const view = workbench.webview();
      await view.locator('#show-pages').click();
      // Where the engine is WebAssembly it is compiled first, which takes a slow machine long.
      await view.locator('.printed-page img').first().waitFor({ timeout: 240_000 });
      const { step, title } = expected.sound.clicked;
      await view.getByRole('button', { name: title }).click();
      await workbench.statusItem(new RegExp(`^Ln ${lineOf(folder, step)}, `)).waitFor();
      await view.locator('#show-sheet').click();
      await view.locator('#sheet main').waitFor();
    },
  },
  {
    name: 'the walk takes the place of the sheet and goes back to it',
    async run({ workbench }) {
      const view = workbench.webview();
      await view.locator('#show-walk').click();
      await view.locator('.walk-body .row').first().waitFor();
      await view.locator('#sheet').waitFor({ state: 'hidden' });
      await view.locator('#show-sheet').click();
      await view.locator('#walk').waitFor({ state: 'hidden' });
      await view.locator('#sheet main').waitFor();
    },
  },
  {
    name: 'the walk marks the step at the cursor',
    async run({ workbench, folder }) {
      const { step, title } = expected.sound.caretIn;
      await workbench.command('Witnessmark: Open the walk of the parts beside the text');
      await workbench.webview().locator('.walk-body .row').first().waitFor();
      // A line can be gone to only where the text has the focus.
      await workbench.tab(basename(expected.sound.file)).click();
      await workbench.focused();
      await workbench.goToLine(lineOf(folder, step) + 1);
      const current = workbench.webview().locator('.step-head[aria-current="step"]', { hasText: title });
      await current.waitFor({ state: 'attached' });
    },
  },
  {
    name: 'the arrow keys go from cell to cell of the walk, and Enter to the source',
    async run({ workbench, folder }) {
      const { part, step, title } = expected.sound.walked;
      const cells = workbench.webview().locator('.walk-frame [tabindex="0"]');
      await workbench.webview().locator('.step-head .hit').nth(1).click();
      await workbench.statusItem(new RegExp(`^Ln ${lineOf(folder, expected.sound.clicked.step)}, `)).waitFor();
      for (const key of ['ArrowDown', 'ArrowDown', 'ArrowRight']) await cells.press(key);
      await cells.filter({ hasText: `${title}: ${part}` }).waitFor({ state: 'attached' });
      await cells.press('Enter');
      await workbench.statusItem(new RegExp(`^Ln ${lineOf(folder, step)}, `)).waitFor();
      await workbench.focused();
    },
  },
  {
    name: 'the step sheet is printed to a PDF',
    async run({ workbench, folder }) {
      const { pdf, asksForPath } = expected.sound;
      assert.ok(!existsSync(join(folder, pdf)), 'there is a PDF before anything was printed');
      // The palette lists the command where the caret is in a procedure, or the sheet has the focus.
      await workbench.command('Witnessmark: Print the step sheet to PDF');
      if (asksForPath) await workbench.answerFile('Print the step sheet', workbench.pathOf(folder, pdf));
      const text = async () => (await workbench.written(folder, pdf))?.toString('latin1');
      // Where the engine is WebAssembly it is compiled first, which takes a slow machine long.
      await until('the printed file', async () => (await text())?.includes('%%EOF'), 240);
      assert.equal((await text()).slice(0, 5), '%PDF-');
    },
  },
  {
    name: 'the step sheet is printed as a form, the one of the command line',
    async run({ workbench, folder }) {
      const { file, pdf, buildId, asksForPath } = expected.sound;
      const form = pdf.replace('.pdf', '-fillable.pdf');
      await workbench.command('Witnessmark: Print the step sheet as a form to fill in on a screen');
      if (asksForPath) await workbench.answerFile('Print the step sheet', workbench.pathOf(folder, form));
      const printed = async () => workbench.written(folder, form);
      await until('the printed form', async () => (await printed())?.toString('latin1').includes('/AcroForm'), 240);
      const target = join(folder, 'form-from-the-command-line.pdf');
      const args = ['sheet', join(folder, file), '--build', buildId, '--fillable', '--out', target];
      const run = spawnSync(process.execPath, [fromRoot('server/dist/cli.js'), ...args], { encoding: 'utf8' });
      assert.equal(run.status, 0, run.stderr);
      assert.ok(readFileSync(target).equals(await printed()), 'the two files differ');
    },
  },
  {
    name: 'what has changed since a commit stands beside the text and above the value',
    async run({ workbench, folder }) {
      const { file, torque } = expected.sound;
      const path = join(folder, file);
      const changed = readFileSync(path, 'utf8').replace(`torque: ${torque}`, 'torque: 51 ± 3 N·m');
      writeFileSync(path, changed);
      await workbench.tab(basename(file)).click();
      await workbench.command('Witnessmark: Show what changed since');
      await workbench.pick('As released');
      const page = workbench.webview();
      await page.locator('.changes.hurt li', { hasText: 'ten times' }).waitFor();
      await page
        .getByRole('button', { name: /As released: / })
        .first()
        .click();
      await workbench.text().filter({ hasText: torque }).first().waitFor();
      await workbench.screenshot('changed');
      await workbench.tab(basename(file)).first().click();
      await workbench.goToLine(changed.slice(0, changed.indexOf('51 ± 3 N·m')).split('\n').length);
      await workbench.page.locator('.codelens-decoration', { hasText: /was 5\.1\s±\s0\.3\sN·m.*ten times/ }).waitFor();
    },
  },
  ...beginningScenarios,
];

/** The number of the line, from 1, on which a step of the sound sample begins; or of the first one in it with the words. */
function lineOf(folder, step, words = /./) {
  const lines = readFileSync(join(folder, expected.sound.file), 'utf8').split('\n');
  const start = lines.findIndex((line) => line.trim() === `- step: ${step}`);
  const at = lines.findIndex((line, i) => i >= start && words.test(line.trim()));
  assert.ok(start >= 0 && at >= 0, `the sample has no step ${step} with ${words}`);
  return at + 1;
}

/** Whether the upper edge of an element of the sheet is within the part of the page that is in view. */
function isSeen(locator) {
  return locator.evaluate((element) => {
    const { top } = element.getBoundingClientRect();
    return top >= 0 && top < innerHeight;
  });
}

function colourOf(locator) {
  return locator.evaluate((element) => getComputedStyle(element).color).catch(() => undefined);
}
