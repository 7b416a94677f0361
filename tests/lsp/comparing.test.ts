import { expect, test } from 'vitest';
import { CodeLensRequest } from 'vscode-languageserver/node';
import {
  COMPARE,
  type CompareResult,
  SHEET_HTML,
  type SheetHtmlResult,
  SOURCES,
  type SourcesResult,
} from '../../server/src/lsp/protocol';
import { example, FAMILY, PROCEDURE, steps } from '../ide/markedExample';
import { TestClient } from './client';

const text = steps('- tighten: cap-nut\n  torque: 5.1 ± 0.3 N·m');

async function compared(client: TestClient, changed: (text: string) => string): Promise<CompareResult> {
  const uri = client.uri(PROCEDURE);
  const { uris } = await client.connection.sendRequest<SourcesResult>(SOURCES.method, { uri });
  const files = example(text);
  const texts = uris.flatMap((one) => {
    const path = Object.keys(files).find((name) => client.uri(name) === one);
    return path === undefined ? [] : [{ uri: one, text: path === PROCEDURE ? changed(text) : (files[path] ?? '') }];
  });
  return client.connection.sendRequest<CompareResult>(COMPARE.method, { uri, label: 'the last commit', texts });
}

async function opened(): Promise<TestClient> {
  const client = await TestClient.start(example(text));
  client.open(PROCEDURE, text);
  return client;
}

const sheetOf = (client: TestClient) =>
  client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, { uri: client.uri(PROCEDURE) });

async function lensesOf(client: TestClient): Promise<(string | undefined)[]> {
  const textDocument = { uri: client.uri(PROCEDURE) };
  return ((await client.connection.sendRequest(CodeLensRequest.type, { textDocument })) ?? []).map(
    (lens) => lens.command?.title,
  );
}

test('everything that a procedure is printed from is named', async () => {
  const client = await opened();
  const { uris } = await client.connection.sendRequest<SourcesResult>(SOURCES.method, { uri: client.uri(PROCEDURE) });
  expect(uris).toEqual(expect.arrayContaining([client.uri(PROCEDURE), client.uri(FAMILY)]));
});

test('a torque that was another one is told on the page, above the line and on the sheet', async () => {
  const client = await opened();
  const { body, sum } = await compared(client, (now) => now.replace('5.1 ± 0.3', '0.51 ± 0.03'));
  expect(sum).toMatch(/^1 could hurt; /);
  expect(body).toContain('0.51 ± 0.03 N·m → 5.1 ± 0.3 N·m (ten times)');
  expect(body).toMatch(/<button type="button" data-side="before" data-uri="[^"]*" data-start="\d+">the last commit: /);
  expect(await lensesOf(client)).toContain('was 0.51 ± 0.03 N·m in the last commit: ten times');
  expect((await sheetOf(client)).html).toContain('class="step changed"');
});

test('it follows what is typed, and ends when nobody compares any more', async () => {
  const client = await opened();
  await compared(client, (now) => now);
  expect((await sheetOf(client)).html).not.toContain('class="step changed"');
  client.change(PROCEDURE, text.replace('5.1 ± 0.3', '6.1 ± 0.3'));
  expect(await lensesOf(client)).toContain('was 5.1 ± 0.3 N·m in the last commit');
  expect((await sheetOf(client)).html).toContain('class="step changed"');
  await client.connection.sendRequest(COMPARE.method, { uri: client.uri(PROCEDURE), label: '' });
  expect((await sheetOf(client)).html).not.toContain('Changed since');
});
