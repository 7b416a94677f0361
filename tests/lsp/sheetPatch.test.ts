import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { SHEET_HTML, SHEET_PATCH, type SheetHtmlResult, type SheetPatchResult } from '../../server/src/lsp/protocol';
import { broughtBy, PageReader } from '../support/pageReader';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const TIGHTEN = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');
const TEXT = TIGHTEN.files[procedure] ?? '';

function patch(client: TestClient, since?: number): Promise<SheetPatchResult> {
  return client.connection.sendRequest(SHEET_PATCH.method, { uri: client.uri(procedure), since });
}

/** The body of the whole page without what says where steps stand. */
async function whole(client: TestClient): Promise<string> {
  const params = { uri: client.uri(procedure) };
  const { html } = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, params);
  return (/<body[^>]*>(.*)<\/body>/s.exec(html)?.[1] ?? '').replace(/ data-source-\w+="[^"]*"/g, '');
}

describe('the page of a sheet as a change of the last one', () => {
  test('is the whole page at first, and nothing when nothing has changed', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const first = await patch(client);
    const reader = new PageReader();
    reader.take(first.page);
    expect(reader.body()).toBe(await whole(client));
    expect(first.page.style).toContain('.step');
    expect(first.page).not.toHaveProperty('since');
    const again = await patch(client, first.page.version);
    expect(again.page.blocks).toEqual([{ kept: first.page.blocks.length, from: 0 }]);
    expect(again.page).not.toHaveProperty('style');
  });

  test('holds the step that was typed in, and makes the whole page out of the pieces known', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    client.open(procedure, TEXT);
    const reader = new PageReader();
    const first = await patch(client);
    reader.take(first.page);
    client.change(procedure, TEXT.replace('4.6 ± 0.3', '4.7 ± 0.3'));
    const { page } = await patch(client, first.page.version);
    expect(page.since).toBe(first.page.version);
    expect(broughtBy(page.blocks)).toContain('step only-step');
    expect(broughtBy(page.blocks)).not.toContain('front section safety-title');
    reader.take(page);
    expect(reader.body()).toBe(await whole(client));
  });

  test('holds no step where lines were added above it, only where it now stands', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    client.open(procedure, TEXT);
    const first = await patch(client);
    client.change(procedure, `# one\n# two\n${TEXT}`);
    const { page } = await patch(client, first.page.version);
    // The proof of what the sheet is made from is another one.
    expect(broughtBy(page.blocks).filter((key) => key.includes('step'))).toEqual([]);
    expect(page.sources).toEqual({ same: 0, between: [], moved: first.page.sources.between.length, by: 12 });
  });

  test('is whole for a reader who has another page than the one sent last', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const first = await patch(client);
    await patch(client, first.page.version);
    const late = await patch(client, first.page.version);
    expect(late.page).not.toHaveProperty('since');
    const reader = new PageReader();
    reader.take(late.page);
    expect(reader.body()).toBe(await whole(client));
  });
});
