import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { makeSampleHistory } from '../review/sampleHistory.mjs';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

function history(): string {
  const folder = join(temporaryFiles({}), 'repository');
  makeSampleHistory(folder);
  return folder;
}

async function sheetOf(file: string, build: string, ...more: string[]): Promise<string> {
  const out = join(temporaryFiles({}), 'sheet.html');
  const { err, code } = await ran('sheet', file, '--build', build, '--out', out, ...more);
  expect([code, err]).toEqual([0, '']);
  return readFileSync(out, 'utf8');
}

const barred = (html: string) => [...html.matchAll(/class="step changed" id="step-([^"]*)"/g)].map(([, id]) => id);

test('the steps that differ carry a bar and a word, and are listed at the front', async () => {
  const html = await sheetOf(
    join(history(), 'procedures/h9-rebuild.procedure.yaml'),
    'h9-52',
    '--changed-since',
    'issue-1',
  );
  expect(barred(html)).toEqual(['receive-unit', 'remove-wheel', 'fit-cover']);
  expect(html.includes('<h2 id="changes-title">Changed since Revision B</h2>')).toBe(true);
  expect(html.includes('<a href="#step-remove-wheel">Step ')).toBe(true);
  expect(html.includes('<span class="tag">Changed</span>')).toBe(true);
});

test('what the family changes is marked where it is tightened, also when the document was given another name', async () => {
  const html = await sheetOf(
    join(history(), 'procedures/op-415.procedure.yaml'),
    'v4-28r',
    '--changed-since',
    'issue-1',
  );
  expect(barred(html)).toContain('fit-compressor-nut');
});

test('a sheet that nothing differs in says so, and one that is compared with nothing says nothing', async () => {
  const file = join(history(), 'procedures/h9-rebuild.procedure.yaml');
  expect((await sheetOf(file, 'h9-52', '--changed-since', 'HEAD')).includes('No step differs.')).toBe(true);
  expect((await sheetOf(file, 'h9-52')).includes('Changed since')).toBe(false);
});

test('a revision that is none is told in one line', async () => {
  const file = join(history(), 'procedures/h9-rebuild.procedure.yaml');
  const { code, err } = await ran('sheet', file, '--build', 'h9-52', '--changed-since', 'nowhere');
  expect([code, err]).toEqual([2, expect.stringMatching(/^witnessmark: There is no revision "nowhere" in .*\n$/)]);
});
