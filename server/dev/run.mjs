// Bundles a TypeScript program of this folder and runs it: `node server/dev/run.mjs generate --check`.
import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [name, ...args] = process.argv.slice(2);
const outfile = resolve('.cache/dev', `${name}.mjs`);
mkdirSync('.cache/dev', { recursive: true });
await build({
  entryPoints: [`server/dev/${name}.ts`],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  packages: 'external',
  logLevel: 'error',
});
process.argv = [process.argv[0], outfile, ...args];
await import(pathToFileURL(outfile).href);
