import { spawn } from 'node:child_process';
import { join } from 'node:path';
import process from 'node:process';
import { pathToFileURL } from 'node:url';
import { describe, expect, onTestFinished, test } from 'vitest';
import {
  createProtocolConnection,
  DidOpenTextDocumentNotification,
  type Hover,
  HoverRequest,
  InitializedNotification,
  InitializeRequest,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: cap-nut\n  torque: 45');
const text = files[EXAMPLE_PATHS.procedure] ?? '';
const initializeParams = { processId: process.pid, rootUri: null, workspaceFolders: null, capabilities: {} };

/** The server as it is packed, in parts, and a client that waits for nothing. */
function startServer(): ProtocolConnection {
  const program = join(import.meta.dirname, '../../server/dist/server.js');
  const server = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  connection.listen();
  onTestFinished(() => {
    connection.dispose();
    server.kill();
  });
  return connection;
}

/** Where the document lies, and a hover over the word in it. */
function documentOnDisk() {
  const uri = pathToFileURL(join(temporaryFiles(files), EXAMPLE_PATHS.procedure)).href;
  return { uri, hoverParams: { textDocument: { uri }, position: placeOf('cap-nut') } };
}

function placeOf(word: string) {
  const before = text.slice(0, text.indexOf(word)).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

describe('the answer to the first message', () => {
  test('comes before everything that was asked at once, and all of that is answered', async () => {
    const { uri, hoverParams } = documentOnDisk();
    const connection = startServer();
    const order: string[] = [];
    const told = connection.sendRequest(InitializeRequest.type, initializeParams).then((result) => {
      order.push('initialize');
      return result;
    });
    void connection.sendNotification(InitializedNotification.type, {});
    const textDocument = { uri, languageId: 'witnessmark', version: 1, text };
    void connection.sendNotification(DidOpenTextDocumentNotification.type, { textDocument });
    const hovers = [1, 2].map(async (number) => {
      const hover = await connection.sendRequest(HoverRequest.type, hoverParams);
      order.push(`hover ${number}`);
      return hover;
    });
    expect((await told).capabilities.hoverProvider).toBe(true);
    for (const hover of await Promise.all(hovers))
      expect(JSON.stringify((hover as Hover).contents)).toContain('cap-nut');
    expect(order).toEqual(['initialize', 'hover 1', 'hover 2']);
  });

  test('is given to somebody who has asked for other things before', async () => {
    const { hoverParams } = documentOnDisk();
    const connection = startServer();
    await expect(connection.sendRequest(HoverRequest.type, hoverParams)).rejects.toThrow();
    const { capabilities } = await connection.sendRequest(InitializeRequest.type, initializeParams);
    expect(capabilities.hoverProvider).toBe(true);
  });
});
