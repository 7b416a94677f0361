import { expect, test } from 'vitest';
import {
  DocumentFormattingRequest,
  DocumentOnTypeFormattingRequest,
  DocumentRangeFormattingRequest,
} from 'vscode-languageserver/node';
import { example, PROCEDURE, steps } from '../ide/markedExample';
import { TestClient } from './client';

const options = { tabSize: 2, insertSpaces: true };

test('formats a document, a range and while typing over the protocol', async () => {
  const text = steps('- tighten: cap-nut # 🔧\n  torque:  4.6 +/- 0.3Nm').replaceAll('\n', '\r\n');
  const client = await TestClient.start(example(steps('- install: wheel')));
  client.open(PROCEDURE, text);
  const textDocument = { uri: client.uri(PROCEDURE) };
  expect(client.initialized?.capabilities).toMatchObject({
    documentFormattingProvider: true,
    documentRangeFormattingProvider: true,
    documentOnTypeFormattingProvider: { firstTriggerCharacter: '\n', moreTriggerCharacter: ['-', ':'] },
  });
  const line = text.split('\r\n').findIndex((one) => one.includes('torque: '));
  const expected = [
    {
      range: { start: { line, character: 20 }, end: { line, character: 33 } },
      newText: '4.6 ± 0.3 N·',
    },
  ];
  const { connection } = client;
  expect(await connection.sendRequest(DocumentFormattingRequest.type, { textDocument, options })).toEqual(expected);
  const range = { start: { line, character: 0 }, end: { line, character: 1 } };
  expect(await connection.sendRequest(DocumentRangeFormattingRequest.type, { textDocument, range, options })).toEqual(
    expected,
  );
  const above = { start: { line: 0, character: 0 }, end: { line: 1, character: 0 } };
  const params = { textDocument, range: above, options };
  expect(await connection.sendRequest(DocumentRangeFormattingRequest.type, params)).toEqual([]);

  client.change(PROCEDURE, `${steps('- remove: wheel')}`.replaceAll('\n', '\r\n').concat('            -'));
  const last = steps('- remove: wheel').split('\n').length - 1;
  const typed = { textDocument, position: { line: last, character: 13 }, ch: '-', options };
  expect(await connection.sendRequest(DocumentOnTypeFormattingRequest.type, typed)).toEqual([
    { range: { start: { line: last, character: 0 }, end: { line: last, character: 12 } }, newText: ' '.repeat(10) },
  ]);
  const nowhere = { textDocument: { uri: client.uri('none.kit.yaml') }, options };
  expect(await connection.sendRequest(DocumentFormattingRequest.type, nowhere)).toBeNull();
});
