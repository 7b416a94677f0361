import { expect, test } from 'vitest';
import { DocumentLinkRequest, FoldingRangeRequest, SelectionRangeRequest } from 'vscode-languageserver/node';
import { example, FAMILY, KIT, PROCEDURE, steps } from '../ide/markedExample';
import { TestClient } from './client';

test('folds, selections and links over the protocol', async () => {
  const text = steps('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m').replaceAll('\n', '\r\n');
  const client = await TestClient.start(example(steps('- install: wheel')));
  client.open(PROCEDURE, text);
  const textDocument = { uri: client.uri(PROCEDURE) };
  expect(client.initialized?.capabilities).toMatchObject({
    foldingRangeProvider: true,
    selectionRangeProvider: true,
    documentLinkProvider: {},
  });
  const folds = await client.connection.sendRequest(FoldingRangeRequest.type, { textDocument });
  expect(folds?.at(-1)).toEqual({ startLine: 15, endLine: 16 });
  const positions = [{ line: 15, character: 23 }];
  const [selection] =
    (await client.connection.sendRequest(SelectionRangeRequest.type, { textDocument, positions })) ?? [];
  expect(selection?.range).toEqual({ start: { line: 15, character: 21 }, end: { line: 15, character: 24 } });
  expect(selection?.parent?.range).toEqual({ start: { line: 15, character: 21 }, end: { line: 15, character: 28 } });
  const links = (await client.connection.sendRequest(DocumentLinkRequest.type, { textDocument })) ?? [];
  expect(links.slice(0, 2).map(({ target }) => target)).toEqual([client.uri(FAMILY), client.uri(KIT)]);
  expect(links[0]?.range).toEqual({ start: { line: 4, character: 8 }, end: { line: 4, character: 22 } });
  const nowhere = { textDocument: { uri: client.uri('none.kit.yaml') } };
  expect(await client.connection.sendRequest(FoldingRangeRequest.type, nowhere)).toBeNull();
});
