// Installs the editors that the editor test drives into a cache folder that later runs reuse: a real VS Code workbench
// served to a browser (code-server) with its own Node, and VS Code for the web. The browser itself is Debian's chromium.
// Usage: node tests/editor/setup.mjs    (prints the folders; WITNESSMARK_EDITOR_CACHE names another place)
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { editorLane, webLane } from './lane.mjs';

/** Installs what is missing; throws with the failing command's output when a step cannot be done. */
export function setUpEditor(lane = editorLane()) {
  if (existsSync(lane.stamp)) return lane;
  emptyPackage(lane.folder);
  // The platform package carries the binary itself, so that no install script has to run.
  npm(lane.folder, process.env, 'install', `${lane.nodePackage}@${lane.nodeVersion}`);
  const env = { ...process.env, PATH: `${dirname(lane.node)}${delimiter}${process.env.PATH}` };
  npm(lane.folder, env, 'install', '--ignore-scripts', `code-server@${lane.codeServerVersion}`);
  npm(lane.vscode, env, 'install', '--omit=dev', '--ignore-scripts');
  // Only the Output panel's log files need this native part; without a compiler the test works all the same.
  run('npm', ['rebuild', '@vscode/spdlog'], lane.vscode, env, 'may fail');
  writeFileSync(lane.stamp, `${lane.codeServerVersion}\n`);
  return lane;
}

/** The same for the editor that is nothing but a page. */
export function setUpWebEditor(lane = webLane()) {
  if (existsSync(lane.stamp)) return lane;
  emptyPackage(lane.folder);
  npm(lane.folder, process.env, 'install', '--ignore-scripts', ...lane.packages);
  writeFileSync(lane.stamp, `${lane.packages.join(' ')}\n`);
  return lane;
}

/** A package file of its own keeps npm from climbing to a parent folder's package.json. */
function emptyPackage(folder) {
  rmSync(folder, { recursive: true, force: true });
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n');
}

function npm(cwd, env, ...args) {
  run('npm', [...args, '--no-audit', '--no-fund', '--loglevel=error'], cwd, env, 'must succeed');
}

function run(command, args, cwd, env, demand) {
  console.log(`editor setup: ${command} ${args.join(' ')}`);
  const result = spawnSync(command, args, { cwd, env, stdio: ['ignore', 'pipe', 'pipe'], encoding: 'utf8' });
  if (result.status === 0) return;
  const text = `${command} ${args.join(' ')} failed in ${cwd}\n${result.stdout}\n${result.stderr}`;
  if (demand === 'must succeed') throw new Error(text);
  console.log(`editor setup: went on without "${args.join(' ')}"`);
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  for (const setUp of [setUpEditor, setUpWebEditor]) {
    const started = Date.now();
    const lane = setUp();
    console.log(`editor setup: ready in ${lane.folder} (${Math.round((Date.now() - started) / 1000)} s)`);
  }
}
