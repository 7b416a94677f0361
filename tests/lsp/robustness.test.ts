import { describe, expect, test } from 'vitest';
import { ErrorCodes, HoverRequest } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { SHEET_HTML, type SheetHtmlResult } from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const text = FAULTY.files[procedure] ?? '';

describe('a server that is asked nonsense', () => {
  test('answers a malformed request with an error, and the next one rightly', async () => {
    const client = await TestClient.start(FAULTY.files);
    await expect(client.connection.sendRequest('textDocument/codeAction', { textDocument: 7 })).rejects.toMatchObject({
      code: ErrorCodes.InternalError,
    });
    await expect(client.connection.sendRequest('witnessmark/nothing', {})).rejects.toMatchObject({
      code: ErrorCodes.MethodNotFound,
    });
    client.open(procedure, text);
    await client.finding(procedure, 'torque-unit-missing');
  });

  test('lives on after notifications that make no sense', async () => {
    const client = await TestClient.start(FAULTY.files);
    for (const method of ['didOpen', 'didChange', 'didClose']) {
      await client.connection.sendNotification(`textDocument/${method}`, { textDocument: null });
    }
    await client.connection.sendNotification('workspace/didChangeWatchedFiles', {});
    client.change(procedure, 'not open yet');
    client.open(procedure, text);
    await client.finding(procedure, 'torque-unit-missing');
  });

  test('lives on after a message that is no JSON', async () => {
    const client = await TestClient.start(FAULTY.files);
    client.server.stdin?.write('Content-Length: 7\r\n\r\n{ "id":');
    client.open(procedure, text);
    await client.finding(procedure, 'torque-unit-missing');
  });

  test('says nothing of documents that it does not know', async () => {
    const client = await TestClient.start(FAULTY.files);
    const textDocument = { uri: client.uri('procedures/no such file.procedure.yaml') };
    const position = { line: 0, character: 0 };
    expect(await client.connection.sendRequest(HoverRequest.type, { textDocument, position })).toBeNull();
    const sheet = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, textDocument);
    expect(sheet).toMatchObject({ builds: [], count: 0, errors: 0 });
    expect(sheet.html).toContain('no procedure');
  });
});

describe('help on a rule', () => {
  test('is shown where its id stands in the settings', async () => {
    const settings = 'witnessmark: 1\nseverities:\n  torque-unit-missing: warning\n';
    const client = await TestClient.start({ ...FAULTY.files, 'witnessmark.yaml': settings });
    const textDocument = { uri: client.uri('witnessmark.yaml') };
    const position = { line: 2, character: 5 };
    const hover = await client.connection.sendRequest(HoverRequest.type, { textDocument, position });
    expect(JSON.stringify(hover?.contents)).toContain('no unit');
  });
});
