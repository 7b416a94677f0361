import { readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { run } from '../../server/src/cli/main';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: cap-nut');

/** Keeps what is written, and lets a test wait for the next line that it names. */
class HeardTerminal {
  readonly colours = false;
  said = '';
  #heard = 0;
  #look: () => void = () => {};

  out = (text: string): void => this.#add(text);
  err = (text: string): void => this.#add(text);

  #add(text: string): void {
    this.said += text;
    this.#look();
  }

  /** Resolves when the words come, counted from where the last wait ended. */
  hear(words: RegExp): Promise<void> {
    return new Promise((resolve) => {
      this.#look = () => {
        const found = words.exec(this.said.slice(this.#heard));
        if (found === null) return;
        this.#heard += found.index + found[0].length;
        this.#look = () => {};
        resolve();
      };
      this.#look();
    });
  }
}

test('a sheet is printed again when a source changes, waits out a broken state, and ends when it is interrupted', async () => {
  const folder = temporaryFiles(files);
  const procedure = join(folder, EXAMPLE_PATHS.procedure);
  const target = join(folder, 'sheet.html');
  const terminal = new HeardTerminal();
  const ended = run(terminal, ['sheet', procedure, '--build', 'k1-a', '--watch', '-o', target]);
  await terminal.hear(/Wrote .*sheet\.html[\s\S]*Watching \d+ files/u);

  const family = join(folder, EXAMPLE_PATHS.family);
  const changed = (files[EXAMPLE_PATHS.family] ?? '').replace('name: cap nut', 'name: crown nut');
  writeFileSync(`${family}.new`, changed);
  renameSync(`${family}.new`, family);
  await terminal.hear(/Wrote [\s\S]*Watching/u);
  expect(readFileSync(target, 'utf8')).toContain('crown nut');

  const text = readFileSync(procedure, 'utf8');
  rmSync(procedure);
  await terminal.hear(/Cannot read [\s\S]*Watching/u);
  expect(readFileSync(target, 'utf8')).toContain('crown nut');

  writeFileSync(procedure, text.replace('Do the work', 'Do it well'));
  await terminal.hear(/Wrote [\s\S]*Watching/u);
  expect(readFileSync(target, 'utf8')).toContain('Do it well');

  process.emit('SIGINT');
  expect(await ended).toBe(0);
  expect(process.listenerCount('SIGINT')).toBe(0);
}, 60_000);

test('a file that changes nothing that is read wakes nobody up', async () => {
  const folder = temporaryFiles(files);
  const terminal = new HeardTerminal();
  const procedure = join(folder, EXAMPLE_PATHS.procedure);
  const ended = run(terminal, ['sheet', procedure, '--build', 'k1-a', '--watch', '-o', join(folder, 'sheet.html')]);
  await terminal.hear(/Watching/u);
  writeFileSync(join(folder, 'procedures', 'notes.txt'), 'nothing');
  writeFileSync(procedure, `${readFileSync(procedure, 'utf8')}\n`);
  await terminal.hear(/Wrote [\s\S]*Watching/u);
  process.emit('SIGINT');
  await ended;
  expect(terminal.said.match(/Wrote/gu)).toHaveLength(2);
}, 60_000);
