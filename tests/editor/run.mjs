// Runs the scenarios in a real editor and prints one line for each; the last line is the count.
//   node tests/editor/run.mjs [--vsix FILE] [--folder FOLDER] [--scenarios FILE] [--only WORDS]
// The folder is copied first, so that fixes and printed sheets never touch the samples themselves.
import { cpSync, existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { parseArgs } from 'node:util';
import { packagePath } from '../../server/dev/package.mjs';
import { fromRoot } from '../../server/dev/tree.mjs';
import { openBrowser } from './browser.mjs';
import { editorHome, installExtension, startCodeServer } from './codeServer.mjs';
import { setUpEditor } from './setup.mjs';
import { Workbench } from './workbench.mjs';

const { values: options } = parseArgs({
  options: {
    vsix: { type: 'string' },
    folder: { type: 'string' },
    scenarios: { type: 'string' },
    only: { type: 'string' },
  },
});

async function main() {
  const lane = setUpEditor();
  if (!existsSync(lane.browser)) throw new Error(`no browser at ${lane.browser}; install chromium`);
  const { scenarios } = await import(
    pathToFileURL(resolve(options.scenarios ?? fromRoot('tests/editor/scenarios.mjs'))).href
  );
  const wanted = scenarios.filter((scenario) => scenario.name.includes(options.only ?? ''));
  // Outside the repository, so that the editor does not search the installed packages.
  const scratch = mkdtempSync(join(tmpdir(), 'witnessmark-editor-'));
  try {
    return await runIn(lane, scratch, wanted);
  } finally {
    rmSync(scratch, { recursive: true, force: true, maxRetries: 3 });
  }
}

async function runIn(lane, scratch, scenarios) {
  const folder = join(scratch, 'work');
  cpSync(resolve(options.folder ?? fromRoot('sample-procedures')), folder, { recursive: true });
  const home = editorHome(lane, join(scratch, 'home'));
  installExtension(lane, home, resolve(options.vsix ?? packagePath()));
  const server = await startCodeServer(lane, home);
  const browser = await openBrowser(lane, join(scratch, 'profile'));
  try {
    const shots = fromRoot('.cache/editor-shots');
    rmSync(shots, { recursive: true, force: true });
    return await runAll(scenarios, { workbench: new Workbench(browser.page, server.origin, shots), folder });
  } finally {
    await browser.close();
    server.stop();
  }
}

/** Runs the scenarios in their order, in one window: loading it again for each would cost half a minute a time. */
async function runAll(scenarios, context) {
  const results = [];
  for (const scenario of scenarios) {
    const started = Date.now();
    const error = await scenario.run(context).then(
      () => undefined,
      (reason) => reason,
    );
    const shot = await context.workbench.screenshot(scenario.name.replaceAll(/[^a-z0-9]+/gi, '-'));
    const seconds = ((Date.now() - started) / 1000).toFixed(1);
    console.log(`editor: ${error === undefined ? 'passed' : 'FAILED'} ${scenario.name} (${seconds} s)`);
    if (error !== undefined) console.log(`editor:   ${error.stack ?? error}\neditor:   see ${shot}`);
    results.push({ name: scenario.name, passed: error === undefined });
  }
  return results;
}

const results = await main();
const passed = results.filter((result) => result.passed).length;
const failed = results.length - passed;
mkdirSync(fromRoot('.cache'), { recursive: true });
writeFileSync(fromRoot('.cache/editor-results.json'), JSON.stringify({ passed, failed, results }, undefined, 2));
console.log(`editor: ${passed} passed, ${failed} failed`);
process.exitCode = failed > 0 || passed === 0 ? 1 : 0;
