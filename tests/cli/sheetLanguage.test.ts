import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { SHEET_HTML, type SheetHtmlResult } from '../../server/src/lsp/protocol';
import { TestClient } from '../lsp/client';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');

async function page(folder: string, ...more: string[]): Promise<string> {
  const target = join(folder, 'sheet.html');
  const procedure = join(folder, EXAMPLE_PATHS.procedure);
  const { code } = await ran('sheet', procedure, '--build', 'k1-a', '-o', target, ...more);
  expect(code).toBe(0);
  return readFileSync(target, 'utf8');
}

describe('the language of a sheet', () => {
  test.each([
    ['de', 'Drehmomenttabelle', '4,6 ± 0,3 N·m'],
    ['es', 'Tabla de pares de apriete', '4,6 ± 0,3 N·m'],
    ['en', 'Torque table', '4.6 ± 0.3 N·m'],
  ])('%s is that which the command names', async (language, table, torque) => {
    const html = await page(temporaryFiles(files), '--language', language);
    expect(html).toContain(`<html lang="${language}">`);
    expect(html).toContain(table);
    expect(html).toContain(torque);
  });

  test('is else that of the settings, on paper and in the preview', async () => {
    const folder = temporaryFiles(files);
    writeFileSync(join(folder, 'witnessmark.yaml'), 'witnessmark: 1\nlanguage: de\n');
    expect(await page(folder)).toContain('<html lang="de">');
    const client = await TestClient.start({ ...files, 'witnessmark.yaml': 'witnessmark: 1\nlanguage: de\n' });
    const uri = client.uri(EXAMPLE_PATHS.procedure);
    const shown = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, { uri, build: 'k1-a' });
    expect(shown.html).toContain('Drehmomenttabelle');
  });

  test('that nobody speaks here is refused in words', async () => {
    const procedure = join(temporaryFiles(files), EXAMPLE_PATHS.procedure);
    const { code, err } = await ran('sheet', procedure, '--build', 'k1-a', '--language', 'fr');
    expect(code).toBe(2);
    expect(err).toContain('en, de');
  });
});
