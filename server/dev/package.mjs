// Builds the extension and packs it into .cache/witnessmark-<version>.vsix, then prints what is in it.
//   node server/dev/package.mjs             always packs
//   node server/dev/package.mjs --if-stale  packs only when the build has changed since
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { build, isStale } from './build.mjs';
import { filesUnder, fromRoot, root } from './tree.mjs';

/** Where the package lies, absolute; the version is the manifest's. */
export function packagePath() {
  const { version } = JSON.parse(readFileSync(fromRoot('package.json'), 'utf8'));
  return fromRoot(`.cache/witnessmark-${version}.vsix`);
}

function pack(output) {
  const manifest = createRequire(import.meta.url).resolve('@vscode/vsce/package.json');
  const vsce = fromRoot(`${manifest.slice(root.length + 1).replace(/package\.json$/, '')}vsce`);
  const flags = ['--no-dependencies', '--allow-missing-repository', '--no-rewrite-relative-links'];
  const run = spawnSync(process.execPath, [vsce, 'package', ...flags, '--out', output], {
    cwd: root,
    stdio: ['ignore', 'pipe', 'pipe'],
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(`vsce could not pack the extension\n${run.stdout}\n${run.stderr}`);
  // The packer prints the tree of what went in, with sizes.
  console.log(run.stdout.trim());
  console.log(`package: ${output.slice(root.length + 1)} ${(statSync(output).size / 1e6).toFixed(1)} MB`);
}

function isPacked(output) {
  if (!existsSync(output)) return false;
  const packedAt = statSync(output).mtimeMs;
  const folders = ['client/dist', 'client/l10n', 'client/media', 'client/syntaxes', 'sample-procedures', 'server/dist'];
  const shipped = folders.flatMap((path) => filesUnder(fromRoot(path)));
  const texts = ['package.nls.json', 'package.nls.de.json', 'package.nls.es.json'];
  const pages = ['README.md', 'CHANGELOG.md', 'client/language-configuration.json'];
  const beside = ['package.json', '.vscodeignore', ...texts, ...pages];
  const files = [...shipped, ...beside.map(fromRoot).filter(existsSync)];
  return files.every((file) => statSync(file).mtimeMs <= packedAt);
}

async function main(argument) {
  const output = packagePath();
  if (isStale()) await build();
  if (argument === '--if-stale' && isPacked(output)) return console.log('package: up to date');
  mkdirSync(fromRoot('.cache'), { recursive: true });
  pack(output);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await main(process.argv[2]);
