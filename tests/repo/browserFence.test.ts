import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { type BuildOptions, build } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { repoPath } from './repoFiles';

/** An entry of the build, as far as it matters here. */
interface Entry {
  output: string;
  inBrowser?: string;
}

const { entries, optionsFor } = (await import(pathToFileURL(repoPath('server/dev/build.mjs')).href)) as {
  entries: Entry[];
  optionsFor(entry: Entry): BuildOptions;
};
const inBrowser = entries.filter((entry) => entry.inBrowser !== undefined);

/** Bundles a text as if it were the entry, and writes nothing. */
function bundle(entry: Entry, contents: string) {
  const { entryPoints: _, outfile: __, ...options } = optionsFor(entry);
  return build({
    ...options,
    stdin: { contents, resolveDir: repoPath('server/src') },
    write: false,
    logLevel: 'silent',
  });
}

test('there are bundles for a browser', () => {
  expect(inBrowser.map((entry) => entry.output)).toEqual([
    'client/dist/extension.browser.js',
    'server/dist/worker.js',
    'server/dist/engineWorker.js',
  ]);
});

describe.each(inBrowser)('the bundle $output', (entry) => {
  test.each(['node:fs', 'path', 'vscode-languageserver/node'])('cannot be built with %s in it', async (name) => {
    await expect(bundle(entry, `import * as used from '${name}';\nself.used = used;\n`)).rejects.toThrow(name);
  });

  test('can be built without', async () => {
    await expect(bundle(entry, 'self.used = 1;\n')).resolves.toMatchObject({ errors: [] });
  });

  test('as built, asks for nothing but the editor', () => {
    const asked = readFileSync(repoPath(entry.output), 'utf8').matchAll(/\brequire\("([^"]+)"\)/g);
    expect([...asked].map((match) => match[1]).filter((name) => name !== 'vscode')).toEqual([]);
  });
});
