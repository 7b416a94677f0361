import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const COVERED = inStep('- remove: cover');

function chartArgs(folder: string, ...more: string[]): string[] {
  return ['sheet', join(folder, EXAMPLE_PATHS.procedure), '--chart', '--build', 'k1-a', ...more];
}

test('the walk is drawn as a page, with what the check finds', async () => {
  const folder = temporaryFiles(COVERED.files);
  const target = join(folder, 'walk.html');
  const { code, out } = await ran(...chartArgs(folder, '-o', target));
  expect(code).toBe(0);
  expect(out).toMatch(/^Wrote .*walk\.html, the walk of K1-A; \d+ errors? in it\n$/);
  const page = readFileSync(target, 'utf8');
  expect(page).toMatch(/^<!DOCTYPE html>/);
  expect(page).toContain('[removed-while-fastened]');
  expect(page).not.toContain('data-source-offset=');
});

test('the walk is drawn as SVG by the name of the file or by the format, with the same bytes', async () => {
  const folder = temporaryFiles(COVERED.files);
  const [byName, byFormat] = [join(folder, 'one.svg'), join(folder, 'two.svg')];
  await ran(...chartArgs(folder, '--out', byName));
  await ran(...chartArgs(folder, '--out', byFormat, '--format', 'svg'));
  expect(readFileSync(byName, 'utf8')).toMatch(/^<\?xml[^>]*>\n<svg /);
  expect(readFileSync(byFormat, 'utf8')).toBe(readFileSync(byName, 'utf8'));
});

test.each([
  ['a format that does not exist', ['--format', 'png'], '--format takes html or svg, not "png"'],
  [
    'a file of another kind',
    ['--out', 'walk.pdf'],
    'A chart as html goes to a file that ends in .html, not to "walk.pdf"',
  ],
  [
    'a format beside a file of the other',
    ['--out', 'walk.html', '--format', 'svg'],
    'ends in .svg, not to "walk.html"',
  ],
  ['a build that does not exist', ['--build', 'k1-z'], 'No variant or option is called k1-z'],
])('%s is one clear line and exit code 2', async (_, more, message) => {
  const { code, out, err } = await ran(...chartArgs(temporaryFiles(COVERED.files), ...more));
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain(message);
});

test('without the family there is no walk, and that is said', async () => {
  const files = { ...COVERED.files, [EXAMPLE_PATHS.family]: '{' };
  const { code, err } = await ran('sheet', join(temporaryFiles(files), EXAMPLE_PATHS.procedure), '--chart');
  expect(code).toBe(2);
  expect(err).toContain('There is no walk to draw: the family of');
});

test('a format is for the chart alone', async () => {
  const folder = temporaryFiles(COVERED.files);
  const { code, err } = await ran('sheet', join(folder, EXAMPLE_PATHS.procedure), '--format', 'svg');
  expect(code).toBe(2);
  expect(err).toContain('--format is for --chart');
});
