import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { copyFileSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { temporaryFiles } from '../support/temporaryFiles';

const DIST = resolve('server/dist');
const { files } = inStep('- tighten: compressor-nut');

interface Surroundings {
  program: string;
  cwd: string;
  env: Record<string, string>;
  lineEnd: string;
}

function printedWith({ program, cwd, env, lineEnd }: Surroundings): string {
  const folder = temporaryFiles(
    Object.fromEntries(Object.entries(files).map(([path, text]) => [path, text.replaceAll('\n', lineEnd)])),
  );
  const target = join(folder, 'sheet.pdf');
  const args = ['sheet', join(folder, EXAMPLE_PATHS.procedure), '--build', 'k1-a', '--out', target];
  const { status, stderr } = spawnSync(process.execPath, [program, ...args], {
    cwd,
    env: { ...process.env, ...env },
    encoding: 'utf8',
  });
  expect([status, stderr]).toEqual([0, '']);
  return createHash('sha256').update(readFileSync(target)).digest('hex');
}

/** The program where no native engine is installed, so that it falls back on WebAssembly. */
function programAlone(): string {
  const folder = temporaryFiles({});
  for (const name of ['cli.js', 'commands.js', 'typstWorker.js']) copyFileSync(join(DIST, name), join(folder, name));
  symlinkSync(join(DIST, 'assets'), join(folder, 'assets'));
  const program = join(folder, 'cli.js');
  expect(() => createRequire(program).resolve('@myriaddreamin/typst-ts-node-compiler')).toThrow();
  return program;
}

test('a sheet has the same bytes in another time zone, language, folder and checkout, and from either engine', () => {
  const here = printedWith({
    program: join(DIST, 'cli.js'),
    cwd: process.cwd(),
    env: { TZ: 'America/Los_Angeles', LANG: 'en_US.UTF-8', LC_ALL: 'en_US.UTF-8' },
    lineEnd: '\n',
  });
  const there = printedWith({
    program: programAlone(),
    cwd: tmpdir(),
    env: { TZ: 'Pacific/Kiritimati', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8', SOURCE_DATE_EPOCH: '1' },
    lineEnd: '\r\n',
  });
  expect(there).toBe(here);
}, 120_000);
