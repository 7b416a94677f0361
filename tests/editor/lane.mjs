// Where the editor lane lives and which versions it is made of: the one place that names them.
import { homedir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';

/** The folder, programs and versions of the installed editor. Nothing is touched; the folder may not exist yet. */
export function editorLane() {
  const codeServerVersion = '4.139.1';
  const nodeVersion = '24.21.0';
  const cache = process.env.WITNESSMARK_EDITOR_CACHE ?? join(homedir(), '.cache', 'witnessmark-editor');
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
    browser: process.env.WITNESSMARK_BROWSER ?? '/usr/bin/chromium',
  };
}
