import { describe, expect, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import {
  type PageBlock,
  SHEET_HTML,
  SHEET_PATCH,
  type SheetHtmlResult,
  type SheetPatchResult,
} from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const TIGHTEN = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');
const TEXT = TIGHTEN.files[procedure] ?? '';

function patch(client: TestClient, since?: number): Promise<SheetPatchResult> {
  return client.connection.sendRequest(SHEET_PATCH.method, { uri: client.uri(procedure), since });
}

/** The markup of the body that a reader has who knew `pieces` before; those of the patch are added to it. */
function put(blocks: readonly PageBlock[], pieces: Map<string, string>): string {
  return blocks
    .map((block) => {
      if ('parts' in block) {
        const attributes = Object.entries(block.attributes).map(([name, value]) => ` ${name}="${value}"`);
        return `<${block.element}${attributes.join('')}>${put(block.parts, pieces)}</${block.element}>`;
      }
      if (block.html !== undefined) pieces.set(block.key, block.html);
      return pieces.get(block.key) ?? `(no ${block.key})`;
    })
    .join('');
}

/** The body of the whole page without what says where steps stand. */
async function whole(client: TestClient): Promise<string> {
  const params = { uri: client.uri(procedure) };
  const { html } = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, params);
  return (/<body[^>]*>(.*)<\/body>/s.exec(html)?.[1] ?? '').replace(/ data-source-\w+="[^"]*"/g, '');
}

const sent = (blocks: readonly PageBlock[]): string[] =>
  blocks.flatMap((block) => ('parts' in block ? sent(block.parts) : block.html === undefined ? [] : [block.key]));

describe('the page of a sheet as a change of the last one', () => {
  test('is the whole page at first, and nothing when nothing has changed', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const first = await patch(client);
    expect(put(first.page.blocks, new Map())).toBe(await whole(client));
    expect(first.page.style).toContain('.step');
    expect(first.page).not.toHaveProperty('since');
    const again = await patch(client, first.page.version);
    expect(sent(again.page.blocks)).toEqual([]);
    expect(again.page).not.toHaveProperty('style');
  });

  test('holds the step that was typed in, and makes the whole page out of the pieces known', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    client.open(procedure, TEXT);
    const pieces = new Map<string, string>();
    const first = await patch(client);
    put(first.page.blocks, pieces);
    client.change(procedure, TEXT.replace('4.6 ± 0.3', '4.7 ± 0.3'));
    const { page } = await patch(client, first.page.version);
    expect(page.since).toBe(first.page.version);
    expect(sent(page.blocks)).toContain('step only-step');
    expect(sent(page.blocks)).not.toContain('front section safety-title');
    expect(put(page.blocks, pieces)).toBe(await whole(client));
  });

  test('holds no step where lines were added above it, only where it now stands', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    client.open(procedure, TEXT);
    const first = await patch(client);
    client.change(procedure, `# one\n# two\n${TEXT}`);
    const { page } = await patch(client, first.page.version);
    // The proof of what the sheet is made from is another one.
    expect(sent(page.blocks).filter((key) => key.includes('step'))).toEqual([]);
    expect(page.sources).toEqual(first.page.sources.map((offset) => offset + 12));
  });

  test('is whole for a reader who has another page than the one sent last', async () => {
    const client = await TestClient.start(TIGHTEN.files);
    const first = await patch(client);
    await patch(client, first.page.version);
    const late = await patch(client, first.page.version);
    expect(late.page).not.toHaveProperty('since');
    expect(put(late.page.blocks, new Map())).toBe(await whole(client));
  });
});
