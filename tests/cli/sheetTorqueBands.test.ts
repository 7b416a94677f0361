import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: compressor-nut');

async function page(...more: string[]): Promise<string> {
  const folder = temporaryFiles(files);
  const target = join(folder, 'sheet.html');
  const { code, err } = await ran(
    'sheet',
    join(folder, EXAMPLE_PATHS.procedure),
    '--build',
    'k1-a',
    '-o',
    target,
    ...more,
  );
  expect([code, err]).toEqual([0, '']);
  return readFileSync(target, 'utf8');
}

test('computed bands are on the sheet only where they are asked for', async () => {
  const plain = await page();
  expect(plain).toContain('Torque table');
  expect(plain).not.toContain('Computed band');
  expect(await page('--torque-bands')).toContain('Computed band');
});

test('the chart has no torque table to show them in', async () => {
  const procedure = join(temporaryFiles(files), EXAMPLE_PATHS.procedure);
  const { code, err } = await ran('sheet', procedure, '--chart', '--torque-bands');
  expect(code).toBe(2);
  expect(err).toContain('--torque-bands is for the sheet');
});

test('the help names the option', async () => {
  expect((await ran('sheet', '--help')).out).toContain('--torque-bands');
});
