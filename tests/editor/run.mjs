// Runs the scenarios in real editors and prints one line for each; the last line is the count.
//   node tests/editor/run.mjs [--lane pages,desktop,web] [--vsix FILE] [--folder FOLDER] [--scenarios FILE] [--only WORDS]
// Without --lane in all of them, else in those that are named. The folder is copied first, so that fixes and printed sheets never touch the samples.
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { packagePath } from '../../server/dev/package.mjs';
import { fromRoot } from '../../server/dev/tree.mjs';
import { openBrowser } from './browser.mjs';
import { lanes } from './lanes.mjs';

const { values: options } = parseArgs({
  options: {
    lane: { type: 'string' },
    vsix: { type: 'string' },
    folder: { type: 'string' },
    scenarios: { type: 'string' },
    only: { type: 'string' },
  },
});

/** The results of one lane; an editor that does not come up is one failed result. */
async function runLane(name) {
  const kind = lanes[name];
  if (kind === undefined) throw new Error(`there is no lane ${name}, only ${Object.keys(lanes).join(' and ')}`);
  // Outside the repository, so that the editor does not search the installed packages.
  const scratch = mkdtempSync(join(tmpdir(), 'witnessmark-editor-'));
  try {
    return await runIn(name, kind, scratch);
  } catch (error) {
    console.log(`editor: FAILED the ${name} editor\neditor:   ${error.stack}`);
    return [{ name: `${name}: the editor`, passed: false }];
  } finally {
    rmSync(scratch, { recursive: true, force: true, maxRetries: 3 });
  }
}

async function runIn(name, kind, scratch) {
  const lane = kind.setUp();
  if (!existsSync(lane.browser)) throw new Error(`no browser at ${lane.browser}; install chromium`);
  const file = resolve(options.scenarios ?? fromRoot(kind.scenarios));
  const { scenarios, isInFolder = () => true } = await import(pathToFileURL(file).href);
  const source = resolve(options.folder ?? fromRoot('sample-procedures'));
  const folder = join(scratch, 'work');
  const filter = (path) => isInFolder(path.slice(source.length + 1).replaceAll('\\', '/'));
  cpSync(source, folder, { recursive: true, filter });
  if (kind.hasHistory === true) beginHistory(folder);
  const vsix = resolve(options.vsix ?? packagePath());
  const server = await kind.start(lane, { vsix, folder, scratch });
  const browser = await openBrowser(lane, join(scratch, 'profile'));
  try {
    const shots = fromRoot(`.cache/editor-shots/${name}`);
    rmSync(shots, { recursive: true, force: true });
    const wanted = scenarios.filter((scenario) => scenario.name.includes(options.only ?? ''));
    return await runAll(name, wanted, { workbench: new kind.Workbench(browser.page, server.origin, shots), folder });
  } finally {
    await browser.close();
    server.stop();
  }
}

/** Puts the folder into a git repository, so that there is something to compare with. */
function beginHistory(folder) {
  const git = (...args) =>
    execFileSync('git', ['-C', folder, '-c', 'user.name=Writer', '-c', 'user.email=writer@example.invalid', ...args]);
  git('init', '-q', '-b', 'main');
  git('add', '-A');
  git('commit', '-q', '-m', 'As released');
}

/** Runs the scenarios in their order, in one window: loading it again for each would cost half a minute a time. */
async function runAll(lane, scenarios, context) {
  const results = [];
  for (const scenario of scenarios) {
    const started = Date.now();
    const error = await scenario.run(context).then(
      () => undefined,
      (reason) => reason,
    );
    const shot = await context.workbench.screenshot(scenario.name.replaceAll(/[^a-z0-9]+/gi, '-'));
    const seconds = ((Date.now() - started) / 1000).toFixed(1);
    const name = `${lane}: ${scenario.name}`;
    console.log(`editor: ${error === undefined ? 'passed' : 'FAILED'} ${name} (${seconds} s)`);
    if (error !== undefined) console.log(`editor:   ${error.stack ?? error}\neditor:   see ${shot}`);
    results.push({ name, passed: error === undefined });
  }
  return results;
}

const results = [];
for (const name of options.lane?.split(',') ?? Object.keys(lanes)) {
  results.push(...(await runLane(name)));
}
const passed = results.filter((result) => result.passed).length;
const failed = results.length - passed;
mkdirSync(fromRoot('.cache'), { recursive: true });
writeFileSync(fromRoot('.cache/editor-results.json'), JSON.stringify({ passed, failed, results }, undefined, 2));
console.log(`editor: ${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
