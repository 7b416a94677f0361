import { describe, expect, test } from 'vitest';
import {
  DidChangeWorkspaceFoldersNotification,
  PublishDiagnosticsNotification,
  type PublishDiagnosticsParams,
} from 'vscode-languageserver/node';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { base64 } from '../../server/src/core/text/base64';
import {
  CLIENT_FOLDER,
  CLIENT_TEXT,
  CLIENT_WRITE,
  type ClientFileParams,
  type ClientFolderResult,
  type ClientTextResult,
  type ClientWriteParams,
  PRINT_SHEET,
  SHEET_HTML,
  type SheetHtmlResult,
} from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;
const ROOT = 'vscode-vfs://some%2Bhost/unit%20two';
const TIGHTEN = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');

/** A client with a folder that is on no disk, and with what has been written into it. */
async function clientWithFolder(files: Readonly<Record<string, string>>) {
  const client = await TestClient.start({}, { folders: [] });
  const written = new Map<string, Buffer>();
  const pathOf = (uri: string) => decodeURIComponent(uri.slice(ROOT.length + 1));
  client.connection.onRequest<ClientTextResult, void>(CLIENT_TEXT.method, ({ uri }: ClientFileParams) => {
    const text = files[pathOf(uri)];
    return text === undefined ? { is: 'missing' } : { is: 'text', text };
  });
  client.connection.onRequest(CLIENT_FOLDER.method, ({ uri }: ClientFileParams): ClientFolderResult => {
    const below = uri === ROOT ? '' : `${pathOf(uri)}/`;
    const rests = Object.keys(files).flatMap((path) => (path.startsWith(below) ? [path.slice(below.length)] : []));
    const names = new Map(rests.map((rest) => [rest.split('/')[0] ?? '', rest.includes('/')]));
    return { entries: [...names].map(([name, isFolder]) => ({ name, is: isFolder ? 'folder' : 'file' })) };
  });
  client.connection.onRequest(CLIENT_WRITE.method, ({ uri, base64 }: ClientWriteParams) => {
    written.set(uri, Buffer.from(base64, 'base64'));
    return { is: 'written' };
  });
  const event = { added: [{ uri: ROOT, name: 'unit two' }], removed: [] };
  const shows = (uri: string) =>
    new Promise<PublishDiagnosticsParams>((resolve) =>
      client.connection.onNotification(PublishDiagnosticsNotification.type, (params) => {
        if (params.uri === uri && params.diagnostics.length > 0) resolve(params);
      }),
    );
  const openFolder = () => client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, { event });
  return { client, written, shows, openFolder };
}

describe('a folder that is on no disk', () => {
  test('is read through the client: a procedure with its family', async () => {
    const { client } = await clientWithFolder(TIGHTEN.files);
    const result = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, {
      uri: `${ROOT}/${procedure}`,
      build: 'k1-b',
    });
    expect(result.build).toEqual({ id: 'k1-b', label: 'K1-B' });
    expect(result.html).toContain('counter-clockwise');
  });

  test('has its documents checked without being opened', async () => {
    const broken = (TIGHTEN.files[procedure] ?? '').replace('cap-nut', 'cap-nought');
    const { shows, openFolder } = await clientWithFolder({ ...TIGHTEN.files, [procedure]: broken });
    const shown = shows(`${ROOT}/${procedure}`);
    await openFolder();
    expect((await shown).diagnostics.map((one) => one.message).join()).toContain('cap-nought');
  });

  test('is written to through the client', async () => {
    const { client, written } = await clientWithFolder(TIGHTEN.files);
    const target = `${ROOT}/printed/op-9%20%C3%A9.pdf`;
    const params = { uri: `${ROOT}/${procedure}`, build: 'k1-b', target };
    expect(await client.connection.sendRequest(PRINT_SHEET.method, params)).toMatchObject({ is: 'printed' });
    expect(written.get(target)?.toString('latin1')).toMatch(/^%PDF-[\s\S]*%%EOF\s*$/);
  });
});

test('a client that hands over no files is told that a sheet can be printed on disk only', async () => {
  const client = await TestClient.start(TIGHTEN.files);
  expect(family in TIGHTEN.files).toBe(true);
  const params = { uri: client.uri(procedure), build: 'k1-b', target: `${ROOT}/sheet.pdf` };
  expect(await client.connection.sendRequest(PRINT_SHEET.method, params)).toEqual({
    is: 'refused',
    why: expect.stringContaining('on disk only'),
  });
});

test.each([0, 1, 2, 3, 4, 255, 256])('%i bytes in base64 are the same bytes', (length) => {
  const bytes = Uint8Array.from({ length }, (_, at) => (at * 197 + 250) % 256);
  expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
});
