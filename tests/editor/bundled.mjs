// Bundles a program of this folder that is written in TypeScript, and loads it.
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { fromRoot } from '../../server/dev/tree.mjs';

// The extension asks its editor for words only; outside of one they are those of the source.
const noEditor = `
export const env = { language: 'en' };
export const l10n = { t: (text, ...values) => text.replace(/{(\\d)}/g, (_, at) => values[at]) };
`;

/** The exports of the program. */
export async function bundled(file) {
  const outfile = fromRoot(`.cache/editor-pages/${file.replace(/\.ts$/, '.mjs')}`);
  await build({
    absWorkingDir: fromRoot('.'),
    entryPoints: [`tests/editor/${file}`],
    outfile,
    bundle: true,
    platform: 'node',
    format: 'esm',
    packages: 'external',
    logLevel: 'error',
    // From here the fonts and templates are found as from the source.
    banner: {
      js: `const __dirname = ${JSON.stringify(fromRoot('server/src/node/pdf'))}; const __filename = __dirname + '/pdfEngine.js';`,
    },
    plugins: [
      {
        name: 'no-editor',
        setup({ onResolve, onLoad }) {
          onResolve({ filter: /^vscode$/ }, () => ({ path: 'vscode', namespace: 'no-editor' }));
          onLoad({ filter: /.*/, namespace: 'no-editor' }, () => ({ contents: noEditor, loader: 'js' }));
        },
      },
    ],
  });
  return import(pathToFileURL(outfile).href);
}
