import { readFileSync } from 'node:fs';
import { basename } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import { repoPath } from './repoFiles';

interface Entry {
  source: string;
  output: string;
}

const { entries } = (await import(pathToFileURL(repoPath('server/dev/build.mjs')).href)) as { entries: Entry[] };

/** The files beside a bundle that it asks for, in the order of the bundle. */
function askedBeside(output: string): string[] {
  const asked = readFileSync(repoPath(output), 'utf8').matchAll(/\brequire\("\.\/([^"]+)"\)/g);
  return [...new Set([...asked].map((match) => match[1] ?? ''))];
}

test('the entry of the server holds the first answer alone, and asks for the other parts', () => {
  expect(askedBeside('server/dist/server.js')).toEqual(['languageServer.js', 'serving.js']);
  expect(readFileSync(repoPath('server/dist/server.js'), 'utf8').length).toBeLessThan(10_000);
});

test('what serves asks for the printed sheet apart, and shares what speaks the protocol', () => {
  expect(askedBeside('server/dist/serving.js')).toEqual(['languageServer.js', 'printing.js']);
});

test('the entry of the command line asks for what checks, and for the other commands, only once they are needed', () => {
  expect(askedBeside('server/dist/cli.js').toSorted()).toEqual(['checking.js', 'commands.js']);
  expect(readFileSync(repoPath('server/dist/cli.js'), 'utf8').length).toBeLessThan(60_000);
});

test('every bundle is built from a source that exists, and is packed', () => {
  const packed = readFileSync(repoPath('.vscodeignore'), 'utf8').split('\n');
  const names = entries.filter(({ output }) => output.startsWith('server/')).map(({ output }) => basename(output));
  for (const name of names) expect(packed).toContain(`!server/dist/${name}`);
  for (const { source } of entries) expect(readFileSync(repoPath(source), 'utf8')).not.toBe('');
});
