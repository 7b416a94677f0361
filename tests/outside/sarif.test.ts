import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import Ajv from 'ajv-draft-04';
import { expect, test } from 'vitest';
import { inStep } from '../../server/src/core/rules/examples';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

/**
 * The log against the published JSON schema of SARIF 2.1.0 (OASIS, sarif-schema-2.1.0, as carried by npm
 * @microsoft/jest-sarif, MIT). One of its patterns is not valid in Unicode mode, which is why that mode is off.
 */
const schema = createRequire(import.meta.url)
  .resolve('@microsoft/jest-sarif')
  .replace(/jest-sarif[\\/].*$/, 'jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json');

const validate = new Ajv({ strict: false, unicodeRegExp: false, validateFormats: false }).compile(
  JSON.parse(readFileSync(schema, 'utf8')),
);

async function logOf(example = inStep('- tighten: cap-nut\n  torque: 45')): Promise<{ runs: { results: object[] }[] }> {
  const { out } = await ran('check', temporaryFiles(example.files), '--format', 'sarif', '--at-least', 'info');
  return JSON.parse(out);
}

test('the log is valid and has the findings', async () => {
  const log = await logOf();
  validate(log);
  expect(validate.errors).toBeNull();
  expect(log.runs[0]?.results).toContainEqual(
    expect.objectContaining({ ruleId: 'torque-unit-missing', level: 'error' }),
  );
});

test('the schema refuses a log that is wrong, so that the test above can fail', async () => {
  const log = await logOf();
  const [result] = log.runs[0]?.results ?? [];
  Object.assign(result ?? {}, { level: 'fatal' });
  expect(validate(log)).toBe(false);
});

test('the log of a review is valid, with a baseline state for each finding', async () => {
  const { files, at } = inStep('- tighten: cap-nut\n  torque: 45');
  const folder = temporaryFiles({
    ...prefixed('old/', { ...files, [at]: (files[at] ?? '').replace('torque: 45', 'torque: 4.6 ± 0.3 N·m') }),
    ...prefixed('new/', files),
  });
  const { out } = await ran('review', join(folder, 'old'), join(folder, 'new'), '--format', 'sarif');
  const log = JSON.parse(out);
  validate(log);
  expect(validate.errors).toBeNull();
  expect(log.runs[0].results).toContainEqual(
    expect.objectContaining({ ruleId: 'torque-unit-missing', baselineState: 'new' }),
  );
});

function prefixed(prefix: string, files: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(files).map(([path, text]) => [`${prefix}${path}`, text]));
}
