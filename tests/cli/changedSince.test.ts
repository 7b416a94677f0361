import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { makeSampleHistory } from '../review/sampleHistory.mjs';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const ON = ['--on', '2026-11-02', '--format', 'json', '--at-least', 'info'];

interface Report {
  readonly documents: readonly { readonly path: string; readonly findings: readonly unknown[] }[];
}

async function checked(...args: string[]): Promise<Report['documents']> {
  const { out, err } = await ran('check', ...args, ...ON);
  expect(err).toBe('');
  return (JSON.parse(out) as Report).documents;
}

/** Changes that reach more than their own document: a family, a kit, the stores; and a procedure alone. */
test.each([
  ['families/ostrel-v4.family.yaml', '5.6 ± 0.3 N·m', '56 ± 3 N·m', 5],
  ['stores/heavy-bay.stores.yaml', /calibration-due: \d{4}/, 'calibration-due: 2020', 2],
  ['procedures/h9-rebuild.procedure.yaml', /title: .*/, 'title: ', 1],
  ['witnessmark.yaml', /$/, '\n# a remark\n', 11],
])('what %s reaches is checked as a whole check does, and the rest is what it was', async (path, from, to, most) => {
  const folder = join(temporaryFiles({}), 'repository');
  makeSampleHistory(folder);
  const before = await checked(folder);
  const text = readFileSync(join(folder, path), 'utf8');
  writeFileSync(join(folder, path), text.replace(from, to));
  const all = await checked(folder);
  const reached = await checked(folder, '--changed-since', 'HEAD');
  const byPath = new Map(all.map((one) => [one.path, one]));
  for (const one of reached) expect(one).toEqual(byPath.get(one.path));
  const names = new Set(reached.map((one) => one.path));
  const rest = (documents: Report['documents']) => documents.filter((one) => !names.has(one.path));
  expect(rest(all)).toEqual(rest(before));
  expect(reached.length).toBeGreaterThan(0);
  expect(reached.length).toBeLessThanOrEqual(most);
});

test('where nothing differs nothing is checked', async () => {
  const folder = join(temporaryFiles({}), 'repository');
  makeSampleHistory(folder);
  const { code, out } = await ran('check', folder, '--changed-since', 'HEAD');
  expect([code, out]).toEqual([0, 'Nothing found in 0 documents\n']);
});
