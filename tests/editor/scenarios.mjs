// What a technical writer does in the editor, told once through in one window. Each scenario starts where the last ended.
import assert from 'node:assert/strict';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expected } from './expected.mjs';
import { until } from './workbench.mjs';

export const scenarios = [
  {
    name: 'a finding stands in the text and in the Problems view',
    async run({ workbench, folder }) {
      await workbench.open(folder, expected.faulty.file);
      await (await workbench.problems()).filter({ hasText: expected.faulty.message }).first().waitFor();
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
    async run({ workbench }) {
      await workbench.goToProblem(expected.faulty.message);
      await workbench.quickFix(expected.faulty.fix);
      await workbench.text().filter({ hasText: expected.faulty.mended }).first().waitFor();
      const rows = (await workbench.problems()).filter({ hasText: expected.faulty.message });
      await until('the finding to go', async () => (await rows.count()) === 0);
      await workbench.save();
    },
  },
  {
    name: 'the step sheet shows the torque beside the text',
    async run({ workbench, folder }) {
      await workbench.open(folder, expected.sound.file);
      await workbench.command('Witnessmark: Open the step sheet beside the text');
      await workbench.webview().locator('body', { hasText: expected.sound.torque }).waitFor();
      await workbench.webview().getByText(expected.sound.torque).first().scrollIntoViewIfNeeded();
    },
  },
  {
    name: 'the step sheet is printed to a PDF',
    async run({ workbench, folder }) {
      const path = join(folder, expected.sound.pdf);
      assert.ok(!existsSync(path), 'there is a PDF before anything was printed');
      // The palette lists the command where the caret is in a procedure, or the sheet has the focus.
      await workbench.tab(expected.sound.tab).click();
      await workbench.command('Witnessmark: Print the step sheet to PDF');
      if (expected.sound.asksForPath) await workbench.answer(path);
      await until('the printed file', () => existsSync(path) && readFileSync(path, 'latin1').includes('%%EOF'));
      assert.equal(readFileSync(path, 'latin1').slice(0, 5), '%PDF-');
    },
  },
];

function colourOf(locator) {
  return locator.evaluate((element) => getComputedStyle(element).color).catch(() => undefined);
}
