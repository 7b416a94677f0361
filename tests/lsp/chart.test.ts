import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { CHART_HTML, type ChartHtmlResult, SHEET_CHANGED } from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;
const REMOVE = inStep('- remove: cap-nut');

function page(client: TestClient, build?: string): Promise<ChartHtmlResult> {
  return client.connection.sendRequest(CHART_HTML.method, { uri: client.uri(procedure), build });
}

describe('the walk over the protocol', () => {
  test('shows the build that is asked for, and the plainest where that does not exist', async () => {
    const client = await TestClient.start(REMOVE.files);
    const left = await page(client, 'k1-b');
    expect(left.build).toEqual({ id: 'k1-b', label: 'K1-B' });
    expect(left.html).toContain('Step 1 Do the work: cap nut, taken off');
    expect((await page(client, 'k1-z')).build?.id).toBe(left.builds[0]?.id);
  });

  test('carries for each cell where its instruction stands in the text that is open', async () => {
    const client = await TestClient.start(REMOVE.files);
    const text = `# 🔧\n${REMOVE.files[procedure]}`;
    client.open(procedure, text);
    const { html } = await page(client);
    const cell = /id="cell-cap-nut-0"[^>]* data-source-offset="(\d+)"/.exec(html);
    expect(text.slice(Number(cell?.[1]))).toMatch(/^remove: cap-nut/);
  });

  test('is said to have changed when the family does', async () => {
    const client = await TestClient.start(REMOVE.files);
    await page(client);
    const changed = new Promise<unknown>((resolve) => client.connection.onNotification(SHEET_CHANGED.method, resolve));
    client.writeOnDisk(family, (REMOVE.files[family] ?? '').replace('name: cap nut', 'name: crown nut'));
    expect(await changed).toEqual({ uri: client.uri(procedure) });
    expect((await page(client)).html).toContain('crown nut');
  });

  test('says so where there is no walk', async () => {
    const client = await TestClient.start({ ...REMOVE.files, [family]: '{' });
    const { html, build } = await page(client);
    expect(html).toContain('The family of this procedure cannot be read.');
    expect(build).toBeUndefined();
  });
});
