// Bundles the extension, the language server and the command line, and puts beside them what they read at run time.
//   node server/dev/build.mjs             build everything
//   node server/dev/build.mjs --if-stale  build only when a source is newer than the last whole build
//   node server/dev/build.mjs --prepare   the same as part of an installation, which must not be stopped by it
import { chmodSync, existsSync, mkdirSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { copyAssets } from './assets.mjs';
import { licenceTexts } from './licences.mjs';
import { filesUnder, fromRoot, root } from './tree.mjs';

const nodeTarget = 'node20.12';
// VS Code 1.91, the oldest that the manifest admits, runs its extensions on Node 20.9.
const editorTarget = 'node20.9';
// Browsers of the year of that editor; a page of it asks for no less.
const browserTarget = ['chrome123', 'firefox124', 'safari17'];

/**
 * The parts of the language server that its entry loads once they are needed: at a dynamic import of their source, and
 * where a package is imported that several of them have to share.
 */
const serverParts = [
  {
    source: 'server/src/node/languageServer.ts',
    output: 'server/dist/languageServer.js',
    shares: 'vscode-languageserver',
  },
  { source: 'server/src/node/serving.ts', output: 'server/dist/serving.js', inParts: true },
  { source: 'server/src/node/pdf/pdfEngine.ts', output: 'server/dist/printing.js' },
].map((part) => ({ ...part, target: editorTarget }));

/** The parts of the command line, of which most runs need one or none. */
const commandParts = [
  { source: 'server/src/cli/checking/checker.ts', output: 'server/dist/checking.js', inParts: true },
  { source: 'server/src/cli/commands/otherCommands.ts', output: 'server/dist/commands.js' },
].map((part) => ({ ...part, target: nodeTarget }));

const parts = [...serverParts, ...commandParts];

/** What is bundled. An entry whose source does not exist is skipped with a printed line. */
export const entries = [
  { source: 'client/src/extension.ts', output: 'client/dist/extension.js', target: editorTarget },
  { source: 'server/src/node/main.ts', output: 'server/dist/server.js', target: editorTarget, inParts: true },
  ...serverParts,
  { source: 'server/src/node/typstWorker.ts', output: 'server/dist/typstWorker.js', target: editorTarget },
  // In a browser nothing of Node is there, and a bundle that asks for it fails to build.
  { source: 'client/src/extension.browser.ts', output: 'client/dist/extension.browser.js', inBrowser: 'module' },
  { source: 'server/src/browser/worker.ts', output: 'server/dist/worker.js', inBrowser: 'script' },
  { source: 'server/src/browser/engineWorker.ts', output: 'server/dist/engineWorker.js', inBrowser: 'script' },
  { source: 'server/src/cli/main.ts', output: 'server/dist/cli.js', target: nodeTarget, program: true, inParts: true },
  ...commandParts,
];

// The native engine is optional and differs by platform, so it is looked for at run time and never bundled.
const external = ['vscode', '@myriaddreamin/typst-ts-node-compiler'];

const stamp = fromRoot('.cache/build-stamp.json');

/** Builds everything that exists and returns the output files' paths, relative to the root. */
export async function build() {
  const { build: bundle } = await import('esbuild');
  const started = new Date();
  rmSync(stamp, { force: true });
  rmSync(fromRoot('client/dist'), { recursive: true, force: true });
  rmSync(fromRoot('server/dist'), { recursive: true, force: true });
  const present = entries.filter(isPresent);
  const results = await Promise.all(present.map((entry) => bundle(optionsFor(entry))));
  for (const entry of present) if (entry.program) chmodSync(fromRoot(entry.output), 0o755);
  const packages = results.flatMap((result) => Object.keys(result.metafile.inputs));
  const outputs = present.map((entry) => entry.output);
  outputs.push(...copyAssets(fromRoot('server/dist/assets')));
  writeFileSync(fromRoot('server/dist/THIRD-PARTY-LICENCES.txt'), licenceTexts(packages));
  outputs.push('server/dist/THIRD-PARTY-LICENCES.txt');
  mkdirSync(dirname(stamp), { recursive: true });
  writeFileSync(stamp, `${JSON.stringify({ entries: present.map((entry) => entry.source), outputs }, undefined, 2)}\n`);
  // A file saved while the bundles were being written must count as newer than they are.
  utimesSync(stamp, started, started);
  return outputs;
}

function isPresent(entry) {
  if (existsSync(fromRoot(entry.source))) return true;
  console.log(`build: skipped ${entry.output}, there is no ${entry.source} yet`);
  return false;
}

export function optionsFor(entry) {
  return {
    absWorkingDir: root,
    entryPoints: [entry.source],
    outfile: entry.output,
    bundle: true,
    ...(entry.inBrowser === undefined ? onNode(entry) : inBrowser(entry)),
    minify: true,
    // Names in a stack trace are worth their few kilobytes when somebody sends one in.
    keepNames: true,
    metafile: true,
    legalComments: 'none',
    logLevel: 'warning',
  };
}

function onNode(entry) {
  return {
    platform: 'node',
    format: 'cjs',
    target: entry.target,
    external,
    ...(entry.inParts ? { plugins: [leavesParts], supported: { 'dynamic-import': false } } : {}),
    // Some packages are ES modules that ask where they lie; a bundle in CommonJS has to be told.
    define: { 'import.meta.url': 'importMetaUrl' },
    banner: { js: bannerFor(entry) },
  };
}

/** Leaves to the parts what is theirs, and has them loaded from beside the bundle. */
const leavesParts = {
  name: 'leaves parts',
  setup(bundle) {
    bundle.onResolve({ filter: /^\.\.?\// }, ({ kind, path, resolveDir }) => {
      if (kind !== 'dynamic-import') return undefined;
      return beside(parts.find(({ source }) => fromRoot(source) === `${resolve(resolveDir, path)}.ts`));
    });
    bundle.onResolve({ filter: /^[^.]/ }, ({ path }) =>
      beside(parts.find(({ shares }) => path === shares || path === `${shares}/node`)),
    );
  },
};

function beside(part) {
  return part === undefined ? undefined : { path: `./${basename(part.output)}`, external: true };
}

/** The editor loads the extension as a module in CommonJS, and a worker is a script that is run. */
function inBrowser(entry) {
  return {
    platform: 'browser',
    format: entry.inBrowser === 'module' ? 'cjs' : 'iife',
    target: browserTarget,
    external: ['vscode'],
    // The engine would look beside itself for its program, which it is handed instead.
    define: { 'import.meta.url': '""' },
  };
}

function bannerFor(entry) {
  const whereThisLies = "const importMetaUrl = require('node:url').pathToFileURL(__filename).href;";
  const hasShebang = readFileSync(fromRoot(entry.source), 'utf8').startsWith('#!');
  return entry.program && !hasShebang ? `#!/usr/bin/env node\n${whereThisLies}` : whereThisLies;
}

/** Whether a source is newer than the last whole build, an output is gone, or an entry has come or gone since. */
export function isStale() {
  if (!existsSync(stamp)) return true;
  const built = JSON.parse(readFileSync(stamp, 'utf8'));
  const present = entries.filter((entry) => existsSync(fromRoot(entry.source))).map((entry) => entry.source);
  if (present.join() !== built.entries.join()) return true;
  if (!built.outputs.every((output) => existsSync(fromRoot(output)))) return true;
  const builtAt = statSync(stamp).mtimeMs;
  return sources().some((file) => statSync(file).mtimeMs > builtAt);
}

function sources() {
  const folders = ['client/src', 'server/src', 'server/dev', 'schemas'].map((folder) => fromRoot(folder));
  return [...folders.flatMap(filesUnder), fromRoot('package.json'), fromRoot('package-lock.json')];
}

async function main(argument) {
  if (argument === '--if-stale' && !isStale()) return console.log('build: up to date');
  const started = performance.now();
  for (const output of await build()) {
    const size = statSync(fromRoot(output)).size;
    console.log(`build: ${output} ${Math.ceil(size / 1024)} kB`);
  }
  console.log(`build: done in ${Math.round(performance.now() - started)} ms`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const argument = process.argv[2];
  await main(argument).catch((error) => {
    console.error(`build: failed: ${error.message}`);
    // An installation goes on without the bundles; `npm test` and `npm run build` then report the same failure.
    process.exitCode = argument === '--prepare' ? 0 : 1;
  });
}
