import { spawnSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { build } from 'esbuild';
import { ProcedureView } from '../../src/core/analysis/procedureView';
import { settingsFor } from '../../src/core/analysis/settings';
import { pickBuild } from '../../src/core/builds';
import { buildSheet, listSheetBuilds } from '../../src/core/sheet/buildSheet';
import type { Sheet } from '../../src/core/sheet/sheet';
import type { Printing } from './printing/child';
import { procedureOf, SAMPLE_URI, workspaceOfSample } from './procedures';

const folder = resolve('.cache/dev/printing');
const child = resolve(folder, 'child.cjs');

/**
 * What a printed page costs with each carrier of the engine, beside a page of the same words that is set by pdfkit with
 * the same typeface. Each is a process of its own, so that cold is cold. CPU milliseconds.
 */
export async function printing(sizes: readonly number[] = [60, 500]): Promise<void> {
  await bundleChild();
  console.log('\nprinting the sheet, CPU ms a page; memory is the most that the process held');
  for (const steps of sizes) {
    const file = resolve(folder, `sheet-${steps}.json`);
    writeFileSync(file, JSON.stringify(await sheetOf(steps)));
    const words = resolve(folder, `words-${steps}.json`);
    const native = run('native', file, words);
    show(`${steps} steps, ${native.pages} pages, native`, native);
    show(`${steps} steps, WebAssembly`, run('wasm', file, words));
    show(`${steps} steps, the same words by pdfkit`, run('plain', file, words));
  }
}

async function sheetOf(steps: number): Promise<Sheet> {
  const workspace = await workspaceOfSample();
  workspace.set(SAMPLE_URI, { is: 'text', text: procedureOf(steps) });
  const { snapshot } = workspace;
  const document = snapshot.document(SAMPLE_URI);
  const procedure = document === undefined ? undefined : ProcedureView.of(snapshot, document);
  if (procedure === undefined) throw new Error('no procedure');
  const picked = pickBuild(procedure.space, listSheetBuilds(procedure)[0]?.id ?? '');
  if (picked.kind === 'refused') throw new Error('no build');
  const settings = settingsFor(snapshot, SAMPLE_URI);
  return buildSheet(procedure, picked, { findings: [], settings, language: 'en', paper: 'a4' });
}

// Assets are found beside the sources, as when the program runs from them.
async function bundleChild(): Promise<void> {
  mkdirSync(folder, { recursive: true });
  await build({
    entryPoints: ['server/dev/bench/printing/child.ts'],
    outfile: child,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    packages: 'external',
    define: { __dirname: JSON.stringify(resolve('server/src/node/pdf')) },
    logLevel: 'error',
  });
}

function run(how: string, sheet: string, words: string): Printing {
  const { stdout, stderr, status } = spawnSync(process.execPath, [child, how, sheet, words], { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Printing;
}

function show(what: string, { pages, cold, warm, megabytes }: Printing): void {
  const each = (ms: number) => (ms / pages).toFixed(1).padStart(7);
  console.log(`${what.padEnd(46)} cold ${each(cold)}   warm ${each(warm)}   ${megabytes.toFixed(0).padStart(5)} MB`);
}
