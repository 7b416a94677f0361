import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const RIGHT = 'witnessmark: 1\nkit: K-1\nlines:\n  - { item: 10, part: nut }\n';
const WRONG = 'kit:  K-1\r\nwitnessmark: 1\r\nlines:\r\n- {part: nut,item: 10}';
const BROKEN = 'witnessmark: 1\nkit: K-1\nlines:\n- { item: 10, part: nut }\n- { item: 20\n';

describe('format', () => {
  test('formats files in place and says which', async () => {
    const folder = temporaryFiles({ 'a.kit.yaml': RIGHT, 'b/b.kit.yaml': WRONG });
    const { code, out, err } = await ran('format', folder);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^Formatted .*b\.kit\.yaml\n1 document formatted, 1 as they should be\n$/);
    expect(readFileSync(join(folder, 'a.kit.yaml'), 'utf8')).toBe(RIGHT);
    expect(readFileSync(join(folder, 'b/b.kit.yaml'), 'utf8')).toBe(RIGHT.replaceAll('\n', '\r\n'));
    expect((await ran('format', folder)).out).toBe('0 documents formatted, 2 as they should be\n');
  });

  test('with --check changes nothing and says what would change', async () => {
    const folder = temporaryFiles({ 'a.kit.yaml': RIGHT, 'b.kit.yaml': WRONG });
    const { code, out } = await ran('format', '--check', folder);
    expect(code).toBe(1);
    expect(out).toMatch(/^Would format .*b\.kit\.yaml\n1 document to be formatted, 1 as they should be\n$/);
    expect(readFileSync(join(folder, 'b.kit.yaml'), 'utf8')).toBe(WRONG);
    expect((await ran('format', '--check', join(folder, 'a.kit.yaml'))).code).toBe(0);
  });

  test('leaves what is broken, and says so', async () => {
    const folder = temporaryFiles({ 'a.kit.yaml': BROKEN, 'b.kit.yaml': `${WRONG}\r\n<<<<<<< ours\r\n` });
    const { code, err } = await ran('format', folder);
    expect(code).toBe(0);
    expect(err).toMatch(/^Not everything in .*a\.kit\.yaml can be formatted; witnessmark check says why\n/);
    expect(err).toMatch(/\nNothing in .*b\.kit\.yaml can be formatted; witnessmark check says why\n$/);
    expect(readFileSync(join(folder, 'a.kit.yaml'), 'utf8')).toBe(BROKEN);
  });

  test.each([
    [[], 'Name a file or folder to format; . stands for this folder'],
    [['nowhere.kit.yaml'], 'Cannot read nowhere.kit.yaml: there is no such file or folder'],
    [['--path', 'a.kit.yaml'], '--path names what comes with --stdin; it needs --stdin'],
    [['--stdin'], '--stdin needs --path NAME, since the name tells the kind'],
    [['--stdin', '--path', 'notes.txt'], 'notes.txt is no document of ours by its name'],
    [['--stdin', '--path', 'a.kit.yaml', 'b.kit.yaml'], '--stdin formats the standard input alone; name no other path'],
    [['--colour'], "Unknown option '--colour'; see witnessmark format --help"],
  ])('refuses %j in one line', async (args, message) => {
    expect(await ran('format', ...args)).toEqual({ code: 2, out: '', err: `witnessmark: ${message}\n` });
  });

  test('refuses what is not UTF-8, since it would not come back as it was', async () => {
    const folder = temporaryFiles({ 'a.kit.yaml': '' });
    const path = join(folder, 'a.kit.yaml');
    const bytes = Buffer.from('witnessmark:  1\nname: caf\xe9\n', 'latin1');
    writeFileSync(path, bytes);
    const { code, err } = await ran('format', path);
    expect({ code, err }).toEqual({ code: 2, err: `witnessmark: Cannot format ${path}: it is not written in UTF-8\n` });
    expect(readFileSync(path)).toEqual(bytes);
  });

  test('formats the standard input to the standard output', async () => {
    const folder = join(import.meta.dirname, '../../.cache/cli-tests');
    mkdirSync(folder, { recursive: true });
    const outfile = join(folder, `cli-${process.pid}.js`);
    await build({
      entryPoints: [join(import.meta.dirname, '../../server/src/cli/main.ts')],
      outfile,
      bundle: true,
      platform: 'node',
      format: 'cjs',
      external: ['@myriaddreamin/typst-ts-node-compiler'],
      define: { 'import.meta.url': '__filename' },
      logLevel: 'error',
    });
    const run = (...args: string[]) =>
      execFileSync(process.execPath, [outfile, 'format', '--stdin', '--path', 'a.kit.yaml', ...args], { input: WRONG });
    expect(run().toString()).toBe(RIGHT.replaceAll('\n', '\r\n'));
    expect(() => run('--check')).toThrow(/Command failed/);
  });
});
