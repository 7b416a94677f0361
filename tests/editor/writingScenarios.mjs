// A writer at work on the text: what is offered while one types, names that change everywhere, and the layout. All in
// the sample that the quick fix has mended, as it stands open.
import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { expected } from './expected.mjs';
import { until } from './workbench.mjs';

export const writingScenarios = [
  {
    name: 'a tool that is offered while one types comes into the list of tools too',
    async run({ workbench, folder }) {
      const { list, typed, tool, listed } = expected.writing.completion;
      await workbench.goToLine(lastLineOf(folder, list));
      await workbench.lineEnd();
      await workbench.page.keyboard.type(typed);
      await workbench.acceptCompletion(tool);
      await workbench.goToLine(1);
      await workbench.text().filter({ hasText: listed }).waitFor();
    },
  },
  {
    name: 'an id is renamed in every document',
    async run({ workbench, folder }) {
      const { line, to, here, elsewhere, there } = expected.writing.rename;
      await workbench.goToLine(lastLineOf(folder, line));
      await workbench.lineEnd();
      await workbench.rename(to);
      await workbench.text().filter({ hasText: to }).waitFor();
      await workbench.goToLine(1);
      await workbench.text().filter({ hasText: here }).waitFor();
      await workbench.save();
      const text = async () => (await workbench.written(folder, elsewhere))?.toString('utf8') ?? '';
      await until(`the new id in ${elsewhere}`, async () => there.test(await text()));
    },
  },
  {
    name: 'the document is laid out anew',
    async run({ workbench, folder }) {
      const { line, untidy, tidy } = expected.writing.format;
      await workbench.tab(basename(expected.faulty.file)).click();
      await workbench.focused();
      await workbench.goToLine(lastLineOf(folder, line));
      await workbench.page.keyboard.press('End');
      await workbench.page.keyboard.press('Control+ArrowLeft');
      await workbench.page.keyboard.type('   ');
      await workbench.text().filter({ hasText: untidy }).waitFor();
      await workbench.command('Format Document');
      await workbench.text().filter({ hasText: tidy }).waitFor();
    },
  },
];

/** The number, from 1, of the last line of the sample with the words; what is typed above adds no line. */
function lastLineOf(folder, words) {
  const lines = readFileSync(join(folder, expected.faulty.file), 'utf8').split('\n');
  const at = lines.findLastIndex((line) => line.includes(words));
  if (at < 0) throw new Error(`the sample has no line with ${words}`);
  return at + 1;
}
