import { chmodSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { inHead, inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const UNLISTED = inHead(
  'tools: [torque-wrench-10]\nconsumables: []',
  '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]',
);
const BARE = inStep('- tighten: cap-nut\n  torque: 45\n  with: [torque-wrench-10, socket-8]');

test('a finding is shown with its place, its line and a caret, and the run ends with a count', async () => {
  const folder = temporaryFiles(BARE.files);
  const { code, out } = await ran('check', join(folder, BARE.at), '--at-least', 'error');
  expect(code).toBe(1);
  expect(out).toContain(`${BARE.at}:17:21 error torque-unit-missing\n  The torque 45 has no unit`);
  expect(out).toContain('  17 |     torque: 45\n     |             ^^\n');
  expect(out).toContain('fix Write N·m');
  expect(out).toMatch(/\d errors? in 1 document\n$/);
});

test('a folder is walked, and a document without findings is clean', async () => {
  const clean = Object.fromEntries(Object.entries(BARE.files).filter(([path]) => !path.startsWith('procedures/')));
  const { code, out } = await ran('check', temporaryFiles(clean), '--at-least', 'error');
  expect(out).toBe('Nothing found in 3 documents\n');
  expect(code).toBe(0);
});

test('--fix applies the safe fixes to the file and leaves the rest', async () => {
  const folder = temporaryFiles(UNLISTED.files);
  const { err, out } = await ran('check', join(folder, UNLISTED.at), '--fix');
  expect(err).toContain('Fixed 1 finding in ');
  expect(out).not.toContain('tool-not-listed');
  expect(readFileSync(join(folder, UNLISTED.at), 'utf8')).toContain('tools: [torque-wrench-10, socket-8]\n');
});

test('JSON tells the same findings', async () => {
  const folder = temporaryFiles(BARE.files);
  const { code, out } = await ran('check', join(folder, BARE.at), '--format', 'json', '--at-least', 'error');
  expect(code).toBe(1);
  const [document] = JSON.parse(out).documents;
  expect(document.findings).toContainEqual(
    expect.objectContaining({
      rule: 'torque-unit-missing',
      step: 'only-step',
      start: { line: 17, column: 21 },
      end: { line: 17, column: 23 },
    }),
  );
});

test.each([
  ['no path', ['check'], 'Say which files or folders to check'],
  ['an unknown option', ['check', '.', '--colour'], "Unknown option '--colour'"],
  [
    'an option without its value',
    ['check', '.', '--at-least'],
    '--at-least needs a value; see witnessmark check --help',
  ],
  ['two rules to explain', ['explain', 'not-yaml', 'text-lost'], 'Name one rule'],
  ['an unknown format', ['check', '.', '--format', 'xml'], '--format takes text, json or sarif, not "xml"'],
  [
    'a day that does not exist',
    ['check', '.', '--on', '2026-02-30'],
    '--on takes a day such as 2026-10-12, not "2026-02-30"',
  ],
  [
    'a path that is not there',
    ['check', 'nowhere/at/all'],
    'Cannot read nowhere/at/all: there is no such file or folder',
  ],
  ['a file that is no document', ['check', 'package.json'], 'package.json is no document of ours by its name'],
  ['an unknown command', ['chek', '.'], 'There is no command chek; did you mean check'],
  [
    'an unknown rule',
    ['explain', 'torque-unit-mising'],
    'There is no rule torque-unit-mising; did you mean torque-unit-missing',
  ],
])('%s is one clear line and exit code 2', async (_, args, message) => {
  const { code, out, err } = await ran(...args);
  expect(code).toBe(2);
  expect(out).toBe('');
  expect(err).toMatch(/^witnessmark: [^\n]*\n$/);
  expect(err).toContain(message);
});

test('a folder without documents could not be checked', async () => {
  const folder = temporaryFiles({ 'notes.txt': 'nothing here' });
  const { code, err } = await ran('check', folder);
  expect(code).toBe(2);
  expect(err).toContain('No documents found in ');
});

test('a folder named like a document, and a file nobody may read, do not crash', async () => {
  const folder = temporaryFiles(BARE.files);
  mkdirSync(join(folder, 'odd.kit.yaml'));
  writeFileSync(join(folder, 'empty.procedure.yaml'), '');
  chmodSync(join(folder, 'empty.procedure.yaml'), 0o000);
  const { code } = await ran('check', folder);
  // Nothing is closed to the superuser, who gets the findings; anybody else is told that a file could not be read.
  expect(code).toBe(process.getuid?.() === 0 ? 1 : 2);
});

test('explain says what, why, wrong and right', async () => {
  const { code, out } = await ran('explain', 'torque-unit-missing');
  expect(code).toBe(0);
  expect(out).toContain('Wrong:\n    - tighten: cap-nut\n      torque: 45\n');
  expect((await ran('explain')).out).toContain('torque-unit-missing');
});

test('a file that is named twice, and with its folder, is checked once', async () => {
  const folder = temporaryFiles({ 'a b é/s.stores.yaml': BARE.files['stores/bay-1.stores.yaml'] ?? '' });
  const file = join(folder, 'a b é', 's.stores.yaml');
  const { code, out } = await ran('check', file, join(folder, '.', 'a b é', '..', 'a b é', 's.stores.yaml'), folder);
  expect(out).toBe('Nothing found in 1 document\n');
  expect(code).toBe(0);
});

test('--fix keeps line ends and the byte order mark', async () => {
  const files = Object.fromEntries(
    Object.entries(UNLISTED.files).map(([path, text]) => [path, `\uFEFF${text.replaceAll('\n', '\r\n')}`]),
  );
  const bare = (files[UNLISTED.at] ?? '').replace('witnessmark: 1\r\n', '').replace(/^tools:.*\r\n/m, '');
  const folder = temporaryFiles({ ...files, [UNLISTED.at]: bare });
  const { err } = await ran('check', join(folder, UNLISTED.at), '--fix');
  const text = readFileSync(join(folder, UNLISTED.at), 'utf8');
  expect(err).toContain('Fixed ');
  expect(text.startsWith('\uFEFFwitnessmark: 1\r\n')).toBe(true);
  expect(text).toMatch(/\r\ntools: \[.*socket-8.*\]\r\n/);
  expect(text).not.toMatch(/[^\r]\n/);
});

test.each(['json', 'sarif'])('%s is one document on its own, also with --fix', async (format) => {
  const folder = temporaryFiles(UNLISTED.files);
  const { out, err } = await ran('check', folder, '--fix', '--format', format);
  expect(() => JSON.parse(out)).not.toThrow();
  expect(err).toContain('Fixed ');
});

test.runIf(process.getuid?.() !== 0)('a folder that may not be opened does not pass for clean', async () => {
  const folder = temporaryFiles({ 'locked/k.kit.yaml': '', 'ok.stores.yaml': 'witnessmark: 1\nstores: Bay 1\n' });
  chmodSync(join(folder, 'locked'), 0o000);
  const { code, err } = await ran('check', folder);
  chmodSync(join(folder, 'locked'), 0o755);
  expect(code).toBe(2);
  expect(err).toContain('locked: permission denied');
});
