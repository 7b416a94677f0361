import { expect, test } from 'vitest';
import {
  type CompletionClientCapabilities,
  type CompletionItem,
  type CompletionList,
  CompletionRequest,
  CompletionResolveRequest,
  InsertReplaceEdit,
  InsertTextFormat,
  InsertTextMode,
  type TextEdit,
} from 'vscode-languageserver/node';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { example, FAMILY, PROCEDURE, steps } from '../ide/markedExample';
import { readMarks } from '../support/markedText';
import { TestClient } from './client';

const EDITOR: CompletionClientCapabilities = {
  completionItem: {
    snippetSupport: true,
    insertReplaceSupport: true,
    labelDetailsSupport: true,
    insertTextModeSupport: { valueSet: [InsertTextMode.asIs, InsertTextMode.adjustIndentation] },
    resolveSupport: { properties: ['documentation', 'additionalTextEdits'] },
    documentationFormat: ['markdown'],
  },
};

/** Asks at `‸` of a document that is only open in the editor as it is typed. */
async function ask(source: Readonly<Record<string, string>>, completion?: CompletionClientCapabilities) {
  const { files, at, offset } = readMarks(source);
  const client = await TestClient.start(files, completion === undefined ? {} : { textDocument: { completion } });
  client.open(at, files[at] ?? '');
  const position = new LineIndex(files[at] ?? '').position(offset);
  const list = (await client.connection.sendRequest(CompletionRequest.type, {
    textDocument: { uri: client.uri(at) },
    position,
  })) as CompletionList | null;
  const items = list?.items ?? [];
  const item = (label: string): CompletionItem => {
    const found = items.find((one) => one.label === label);
    if (found === undefined) throw new Error(`No ${label} among ${items.map((one) => one.label).join(' ')}`);
    return found;
  };
  const resolve = (label: string) => client.connection.sendRequest(CompletionResolveRequest.type, item(label));
  return { client, list, item, resolve, position };
}

const UNLISTED = example(steps('- tighten: cap-nut\n  with: [socket‸').replace(', socket-8', ''));

test('ids come in order, the whole list at once, and replace what is typed', async () => {
  const { list, item, position, client } = await ask(UNLISTED, EDITOR);
  expect(client.initialized?.capabilities.completionProvider).toMatchObject({ resolveProvider: true });
  expect(list?.isIncomplete).toBe(false);
  const socket = item('socket-8');
  expect(socket.labelDetails?.description).toBe('8 mm socket');
  const start = { line: position.line, character: position.character - 'socket'.length };
  expect(socket.textEdit).toEqual(
    InsertReplaceEdit.create('socket-8', { start, end: position }, { start, end: position }),
  );
  const order = list?.items.map((one) => one.sortText ?? '') ?? [];
  expect([...order].sort()).toEqual(order);
  expect(JSON.stringify(socket.data).length).toBeLessThan(250);
  expect(socket).not.toHaveProperty('documentation');
  expect(socket).not.toHaveProperty('commitCharacters');
});

test('a tool that the procedure does not list is listed once it is chosen, looked up when it is looked at', async () => {
  const { item, resolve } = await ask(UNLISTED, EDITOR);
  expect(item('socket-8')).not.toHaveProperty('additionalTextEdits');
  const resolved = await resolve('socket-8');
  expect(resolved.additionalTextEdits?.map(({ newText }) => newText)).toEqual([', socket-8']);
  expect(JSON.stringify(resolved.documentation)).toContain('8 mm');
  expect((await resolve('socket-10')).additionalTextEdits).toBeUndefined();
});

test('a client that cannot look up edits later gets them at once, in plain text and with one range', async () => {
  const { item, resolve } = await ask(UNLISTED);
  const socket = item('socket-8');
  expect(socket.additionalTextEdits?.map(({ newText }) => newText)).toEqual([', socket-8']);
  expect((socket.textEdit as TextEdit).range.start.line).toBe((socket.textEdit as TextEdit).range.end.line);
  expect(socket.detail).toContain('8 mm socket');
  expect((await resolve('socket-8')).documentation).toBeDefined();
});

test('keys are snippets for an editor that knows them, and plain text for others', async () => {
  const source = example(`${steps('- install: wheel')}      - ‸\n`);
  const { item, resolve } = await ask(source, EDITOR);
  expect(item('step')).toMatchObject({
    insertTextFormat: InsertTextFormat.Snippet,
    insertTextMode: InsertTextMode.adjustIndentation,
  });
  expect((item('step').textEdit as InsertReplaceEdit).newText).toBe('step: $1\n  title: $2\n  do:\n    - $3');
  expect(await resolve('step')).toMatchObject({ documentation: { kind: 'markdown' } });
  const plain = await ask(source);
  expect((plain.item('step').textEdit as TextEdit).newText).toBe('step: ');
  expect(plain.item('step')).not.toHaveProperty('insertTextFormat');
});

test('paths are those of the folder, whether or not anything has opened them', async () => {
  const source = example(steps('- install: wheel').replace(/family: .*\n/, 'family: ‸\n'));
  const { list } = await ask({ ...source, 'more/k2.family.yaml': 'witnessmark: 1\n' });
  expect(list?.items.map(({ label }) => label)).toEqual([FAMILY, 'more/k2.family.yaml']);
});

test('nothing where nothing fits, and no harm from data that is not ours', async () => {
  const { client, list } = await ask(example(steps('- say: Turn ‸it.')), EDITOR);
  expect(list).toBeNull();
  const strange: CompletionItem = { label: 'x', data: { uri: 7, about: 'x' } };
  expect(await client.connection.sendRequest(CompletionResolveRequest.type, strange)).toEqual(strange);
  const odd = { label: 'x', data: { uri: client.uri(PROCEDURE), about: { is: 'key', def: 'none', path: 3 } } };
  expect(await client.connection.sendRequest(CompletionResolveRequest.type, odd)).toMatchObject({ label: 'x' });
});
