import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import {
  PRINT_SHEET,
  type PrintSheetResult,
  SHEET_CHANGED,
  SHEET_HTML,
  type SheetHtmlResult,
} from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;
const TIGHTEN = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');

function page(client: TestClient, build?: string): Promise<SheetHtmlResult> {
  return client.connection.sendRequest(SHEET_HTML.method, { uri: client.uri(procedure), build });
}

describe('the sheet over the protocol', () => {
  test('shows the build that is asked for, and the plainest where that does not exist', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const left = await page(client, 'k1-b');
    expect(left.build).toEqual({ id: 'k1-b', label: 'K1-B' });
    expect(left.html).toContain('counter-clockwise');
    expect((await page(client, 'k1-z')).build?.id).toBe(left.builds[0]?.id);
    expect(left.count).toBe(left.builds.length);
  });

  test('carries for each step where it stands in the text that is open', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const text = `# 🔧\n${TIGHTEN.files[procedure]}`;
    client.open(procedure, text);
    const offset = Number(/data-source-offset="(\d+)"/.exec((await page(client)).html)?.[1]);
    expect(text.slice(offset)).toMatch(/^(?:- )?(?:step: )?only-step/);
  });

  test('is said to have changed when a file that it draws on does', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    await page(client);
    const changed = new Promise<unknown>((resolve) => client.connection.onNotification(SHEET_CHANGED.method, resolve));
    client.writeOnDisk(family, (TIGHTEN.files[family] ?? '').replace('name: cap nut', 'name: crown nut'));
    expect(await changed).toEqual({ uri: client.uri(procedure) });
    expect((await page(client)).html).toContain('crown nut');
  });

  test('is printed to the file that is named, or refused in words', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const path = join(client.folder, 'printed sheets', 'op-9 é.pdf');
    const print = (build: string) =>
      client.connection.sendRequest<PrintSheetResult>(PRINT_SHEET.method, {
        uri: client.uri(procedure),
        build,
        target: pathToFileURL(path).href,
      });
    expect(await print('k1-z')).toMatchObject({ is: 'refused', why: expect.stringContaining('k1-z') });
    expect(existsSync(path)).toBe(false);
    expect(await print('k1-b')).toMatchObject({ is: 'printed', build: { id: 'k1-b' } });
    expect(readFileSync(path, 'latin1')).toMatch(/^%PDF-[\s\S]*%%EOF\s*$/);
  });
});
