// What surrounds the writing: how many builds pass, new documents, samples, the check as a task, and the first steps. In
// one window, each where the last ended.
import assert from 'node:assert/strict';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expected } from './expected.mjs';
import { until } from './workbench.mjs';

export const beginningScenarios = [
  {
    name: 'the status bar says how many builds pass and leads to what fails',
    async run({ workbench, folder }) {
      const { file, passing, build, caret } = expected.failing;
      await workbench.open(folder, file);
      await workbench.statusItem(passing).click();
      await workbench.pick(build);
      await workbench.statusItem(caret).waitFor();
      await workbench.focused();
    },
  },
  {
    name: 'a new procedure is begun from its template and has no error',
    async run({ workbench, folder }) {
      const { family, id, title, file, tab, passing, lines } = expected.begun;
      await workbench.command('Witnessmark: New procedure');
      await workbench.pick(family);
      await workbench.answerTo('Number of the procedure', id);
      await workbench.answerTo('Title of the procedure', title);
      await workbench.answerFile('Where the new document goes', join(folder, file));
      await until('the new file', () => existsSync(join(folder, file)));
      await workbench.tab(tab).waitFor();
      await workbench.statusItem(passing).waitFor();
      const text = readFileSync(join(folder, file), 'utf8');
      for (const line of lines) assert.ok(text.includes(`\n${line}\n`), `${line} is not in\n${text}`);
    },
  },
  {
    name: 'the Tab key leads from one placeholder of the new document to the next',
    async run({ workbench, folder }) {
      await workbench.focused();
      await workbench.page.keyboard.press('Tab');
      await workbench.page.keyboard.press('Tab');
      await workbench.page.keyboard.type('D');
      await workbench.save();
      const path = join(folder, expected.begun.file);
      await until('the revision in the file', () => readFileSync(path, 'utf8').includes('\nrevision: D\n'));
    },
  },
  {
    name: 'a file that exists is not written over',
    async run({ workbench, folder }) {
      const path = join(folder, expected.begun.file);
      const before = readFileSync(path, 'utf8');
      await workbench.command('Witnessmark: New procedure');
      await workbench.pick(expected.begun.family);
      await workbench.answerTo('Number of the procedure', 'OP-901');
      await workbench.answerTo('Title of the procedure', 'Another one');
      await workbench.answerFile('Where the new document goes', path);
      // The dialog of the editor asks by itself whether to replace, and even then nothing is lost.
      await workbench.confirmReplacing();
      await workbench.notification('exists already').waitFor();
      assert.equal(readFileSync(path, 'utf8'), before);
    },
  },
  {
    name: 'an empty document offers its template',
    async run({ workbench, folder }) {
      const { file, tab, offered, line } = expected.empty;
      writeFileSync(join(folder, file), '');
      await workbench.openFile(tab);
      await workbench.focused();
      await (await workbench.completions()).filter({ hasText: offered }).first().click();
      await workbench.text().filter({ hasText: line }).first().waitFor();
    },
  },
  {
    name: 'the samples are copied into a folder',
    async run({ workbench, folder }) {
      const parent = join(folder, '..', 'für mich');
      mkdirSync(parent);
      await workbench.command('Witnessmark: Copy the samples into a folder and open it');
      await workbench.answerFolder('Where the folder with the samples goes', `${parent}/`, 'Copy the samples here');
      await workbench.notification('Everything in them is invented').waitFor();
      assert.ok(existsSync(join(parent, 'witnessmark-samples', expected.sound.file)));
    },
  },
  {
    name: 'the task checks the folder and fails with its errors',
    async run({ workbench }) {
      await workbench.command('Tasks: Run Build Task');
      await workbench.pick('check all documents');
      await workbench.failedTask('check all documents').waitFor();
    },
  },
  {
    name: 'the first steps open with their pictures',
    async run({ workbench }) {
      await workbench.command('Witnessmark: Open the first steps');
      const page = workbench.page.locator('.gettingStartedContainer');
      await page.getByText('First steps with Witnessmark').first().waitFor();
      await page.getByText('See a finding and mend it').first().click();
      await workbench.webview().locator('svg').first().waitFor();
    },
  },
];
