// Starts and ends the editor's server, with folders of its own so that nothing of the user's is read or written.
import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { freePort, startServing } from './serving.mjs';

const settings = {
  'security.workspace.trust.enabled': false,
  'telemetry.telemetryLevel': 'off',
  'update.mode': 'none',
  'extensions.autoUpdate': false,
  'extensions.autoCheckUpdates': false,
  'workbench.startupEditor': 'none',
  'workbench.enableExperiments': false,
  'workbench.secondarySideBar.defaultVisibility': 'hidden',
  'workbench.reduceMotion': 'on',
  'chat.disableAIFeatures': true,
  'files.simpleDialog.enable': true,
};

const quiet = [
  ['--auth', 'none'],
  '--disable-telemetry',
  '--disable-update-check',
  '--disable-workspace-trust',
  '--disable-getting-started-override',
  '--disable-proxy',
  '--disable-file-downloads',
  '--ignore-last-opened',
].flat();

/** The folders and environment of one run, all below `home`. */
export function editorHome(lane, home) {
  const paths = { data: join(home, 'data'), extensions: join(home, 'extensions'), log: join(home, 'server.log') };
  mkdirSync(join(paths.data, 'User'), { recursive: true });
  mkdirSync(paths.extensions, { recursive: true });
  writeFileSync(join(paths.data, 'User', 'settings.json'), JSON.stringify(settings, undefined, 2));
  const config = join(home, 'config.yaml');
  writeFileSync(config, '{}\n');
  const env = {
    ...process.env,
    HOME: home,
    XDG_CONFIG_HOME: join(home, 'config'),
    XDG_DATA_HOME: join(home, 'share'),
    XDG_CACHE_HOME: join(home, 'cache'),
    PATH: `${dirname(lane.node)}:${process.env.PATH}`,
    EXTENSIONS_GALLERY: '{"serviceUrl":""}',
  };
  const common = ['--config', config, '--user-data-dir', paths.data, '--extensions-dir', paths.extensions];
  return { ...paths, env, common };
}

/** Installs a packed extension; throws with the editor's own words when it refuses. */
export function installExtension(lane, home, vsix) {
  const run = spawnSync(lane.node, [lane.entry, ...home.common, '--install-extension', vsix, '--force'], {
    env: home.env,
    encoding: 'utf8',
  });
  if (run.status !== 0) throw new Error(`the editor did not install ${vsix}\n${run.stdout}\n${run.stderr}`);
}

/** Starts the server; `stop()` ends it with all that it started. Throws with its log when it does not come up. */
export async function startCodeServer(lane, home) {
  const port = await freePort();
  const args = [lane.entry, ...home.common, '--bind-addr', `127.0.0.1:${port}`, ...quiet];
  const origin = `http://127.0.0.1:${port}`;
  const stop = await startServing(lane.node, args, { env: home.env, log: home.log, url: `${origin}/healthz` });
  return { origin, port, stop };
}
