import { once } from 'node:events';
import { describe, expect, test } from 'vitest';
import { HoverRequest } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const { files } = inStep('- tighten: cap-nut\n  torque: 45');

describe('a server over standard input and output', () => {
  test('ends without a fault once it is told to, after it was told that the end comes', async () => {
    const client = await TestClient.start(files);
    const ended = once(client.server, 'exit');
    expect(await client.connection.sendRequest('shutdown')).toBeNull();
    await client.connection.sendNotification('exit');
    expect(await ended).toEqual([0, null]);
  });

  test('ends with a fault where the end comes without warning', async () => {
    const client = await TestClient.start(files);
    const ended = once(client.server, 'exit');
    await client.connection.sendNotification('exit');
    expect(await ended).toEqual([1, null]);
  });

  test('ends with its client', async () => {
    const client = await TestClient.start(files);
    const ended = once(client.server, 'exit');
    client.server.stdin?.end();
    await ended;
    expect(client.server.exitCode).not.toBeNull();
  });

  test('answers no more than that the end has come, once it was told', async () => {
    const client = await TestClient.start(files);
    await client.connection.sendRequest('shutdown');
    const textDocument = { uri: client.uri(procedure) };
    const hover = client.connection.sendRequest(HoverRequest.type, {
      textDocument,
      position: { line: 0, character: 0 },
    });
    await expect(hover).rejects.toThrow();
  });
});
