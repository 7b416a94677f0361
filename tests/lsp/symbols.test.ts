import { describe, expect, test } from 'vitest';
import {
  type DocumentSymbol,
  DocumentSymbolRequest,
  type SymbolInformation,
  WorkspaceSymbolRequest,
} from 'vscode-languageserver/node';
import { example, FAMILY, PROCEDURE, STORES, steps } from '../ide/markedExample';
import { TestClient } from './client';

const FILES = example(steps('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'));

async function find(client: TestClient, query: string): Promise<SymbolInformation[]> {
  return ((await client.connection.sendRequest(WorkspaceSymbolRequest.type, { query })) ?? []) as SymbolInformation[];
}

describe('over the protocol', () => {
  test('the outline of a document, as a list for a client that shows no tree', async () => {
    const client = await TestClient.start(FILES);
    const textDocument = { uri: client.uri(PROCEDURE) };
    const outline = await client.connection.sendRequest(DocumentSymbolRequest.type, { textDocument });
    expect((outline as SymbolInformation[]).map(({ name, containerName }) => [name, containerName])).toEqual([
      ['Assemble', undefined],
      ['Fit the wheel', 'Assemble'],
    ]);
  });

  test('the outline as a tree, where the client shows one', async () => {
    const documentSymbol = { hierarchicalDocumentSymbolSupport: true };
    const client = await TestClient.start(FILES, { textDocument: { documentSymbol } });
    const textDocument = { uri: client.uri(PROCEDURE) };
    const outline = await client.connection.sendRequest(DocumentSymbolRequest.type, { textDocument });
    const [phase] = (outline ?? []) as DocumentSymbol[];
    expect(phase?.name).toBe('Assemble');
    expect(phase?.children).toMatchObject([
      { name: 'Fit the wheel', detail: 'fit-wheel · 4.6 ± 0.3 N·m', children: [] },
    ]);
    expect(phase?.range.end).toEqual(phase?.children?.[0]?.range.end);
  });

  test('symbols of documents that nobody has opened, and of what is typed but not saved', async () => {
    const client = await TestClient.start(FILES);
    const [socket] = await find(client, 'socket-8');
    expect(socket).toMatchObject({
      name: 'socket-8 – 8 mm socket',
      containerName: 'Bay 1',
      location: {
        uri: client.uri(STORES),
        range: { start: { line: 4, character: 2 }, end: { line: 4, character: 10 } },
      },
    });
    expect(await find(client, 'quick-coupling')).toEqual([]);
    client.open(FAMILY, (FILES[FAMILY] ?? '').replace('  wheel: {', '  quick-coupling: { name: x }\n  wheel: {'));
    expect((await find(client, 'quick-coupling')).map(({ location }) => location.uri)).toEqual([client.uri(FAMILY)]);
    client.close(FAMILY);
    expect(await find(client, 'quick-coupling')).toEqual([]);
    client.writeOnDisk(STORES, 'witnessmark: 1\nstores: Bay 9\n');
    expect(await find(client, 'socket-8')).toEqual([]);
  });

  test('what the server can do is announced', async () => {
    const client = await TestClient.start(FILES);
    expect(client.initialized?.capabilities).toMatchObject({
      documentSymbolProvider: true,
      workspaceSymbolProvider: true,
    });
  });
});
