import { expect, test } from 'vitest';
import {
  type CompletionList,
  CompletionRequest,
  type Position,
  RenameRequest,
  type TextDocumentEdit,
  type TextEdit,
} from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;

/** A procedure with one step, its lines ended by CR LF. */
function windowsText(step: string): string {
  return (inStep(step).files[procedure] ?? '').replaceAll('\n', '\r\n');
}

/** Counted by hand: lines end at CR LF, and a character beyond the basic plane is two. */
function offsetOf(text: string, { line, character }: Position): number {
  return (
    text
      .split('\r\n')
      .slice(0, line)
      .reduce((sum, one) => sum + one.length + 2, 0) + character
  );
}

function positionOf(text: string, offset: number): Position {
  const lines = text.slice(0, offset).split('\r\n');
  return { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
}

function applied(text: string, edits: readonly TextEdit[]): string {
  return edits
    .map(({ range, newText }) => ({ start: offsetOf(text, range.start), end: offsetOf(text, range.end), newText }))
    .sort((a, b) => b.start - a.start)
    .reduce((now, { start, end, newText }) => now.slice(0, start) + newText + now.slice(end), text);
}

test('a renaming behind characters of two units, with CR LF, changes the id and nothing else', async () => {
  const text = windowsText('- { say: "🔧🔧 <cap-nut> 🔩 <cap-nut>", tighten: cap-nut, torque: 4.6 ± 0.3 N·m }');
  const client = await TestClient.start({ ...inStep('').files, [procedure]: text });
  client.open(procedure, text);
  const position = positionOf(text, text.lastIndexOf('cap-nut') + 1);
  const textDocument = { uri: client.uri(procedure) };
  const edit = await client.connection.sendRequest(RenameRequest.type, { textDocument, position, newName: 'end-nut' });
  const changes = (edit?.documentChanges ?? []) as TextDocumentEdit[];
  const here = changes.find((one) => one.textDocument.uri === textDocument.uri)?.edits as TextEdit[];
  expect(applied(text, here)).toBe(text.replaceAll('cap-nut', 'end-nut'));
});

test('what is completed behind characters of two units, with CR LF, replaces what was begun', async () => {
  const text = windowsText('- { say: "🔧🔧 <cap-n> 🔩", tighten: cap-nut, torque: 4.6 ± 0.3 N·m }');
  const client = await TestClient.start({ ...inStep('').files, [procedure]: text });
  client.open(procedure, text);
  const position = positionOf(text, text.indexOf('<cap-n>') + '<cap-n'.length);
  const params = { textDocument: { uri: client.uri(procedure) }, position };
  const { items } = (await client.connection.sendRequest(CompletionRequest.type, params)) as CompletionList;
  const nut = items.find((item) => item.label === 'cap-nut');
  const done = applied(text, [nut?.textEdit as TextEdit]);
  expect(done).toBe(text.replace('<cap-n>', '<cap-nut>'));
});
