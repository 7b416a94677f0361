// VS Code for the web: a page, its extensions in the browser, and a folder that is mounted into it. What the page writes
// stays in the page; the mounted folder itself is only read.

import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import process from 'node:process';
import { fromRoot } from '../../server/dev/tree.mjs';
import { freePort, startServing } from './serving.mjs';
import { unpack } from './unpack.mjs';
import { Workbench } from './workbench.mjs';

const settings = {
  'telemetry.telemetryLevel': 'off',
  'security.workspace.trust.enabled': false,
  'workbench.startupEditor': 'none',
  'workbench.enableExperiments': false,
  'workbench.reduceMotion': 'on',
  'files.simpleDialog.enable': true,
};

/** Serves the page with a packed extension in it and a folder mounted; `stop()` ends that. */
export async function startWebEditor(lane, { vsix, folder, scratch }) {
  const extensions = join(scratch, 'extensions');
  await unpack(vsix, join(extensions, 'witnessmark'), 'extension/');
  // A page has no settings of its own when it is opened for the first time, so the folder has them.
  mkdirSync(join(folder, '.vscode'), { recursive: true });
  writeFileSync(join(folder, '.vscode', 'settings.json'), JSON.stringify(settings, undefined, 2));
  const port = await freePort();
  const config = {
    build: { type: 'static', location: lane.editor, quality: 'stable', version: 'local' },
    extensionPaths: [extensions],
    folderMountPath: folder,
  };
  const args = [fromRoot('tests/editor/serveWeb.mjs'), lane.server, String(port), JSON.stringify(config)];
  const origin = `http://localhost:${port}`;
  const stop = await startServing(process.execPath, args, { log: join(scratch, 'server.log'), url: origin });
  return { origin, stop };
}

/** The window of that page. Its files are in the page, so they are got as anybody gets them: by downloading. */
export class WebWorkbench extends Workbench {
  folderName() {
    return 'vscode-test-web://mount/';
  }

  uriOf(_folder, file) {
    return `vscode-test-web://mount/${file}`;
  }

  pathOf(_folder, file) {
    return `/${file}`;
  }

  async written(_folder, file) {
    const row = this.page.locator('.explorer-folders-view .monaco-list-row', { hasText: basename(file) }).first();
    if (!(await row.isVisible())) return undefined;
    await row.click({ button: 'right' });
    const download = this.page.waitForEvent('download');
    // Chosen by key: a menu takes no click until some moments after it is seen.
    await this.page.locator('.monaco-menu .action-item', { hasText: 'Download' }).hover();
    await this.page.locator('.monaco-menu .action-item.focused', { hasText: 'Download' }).waitFor();
    await this.page.keyboard.press('Enter');
    return readFileSync(await (await download).path());
  }
}
