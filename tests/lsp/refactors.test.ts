import { expect, test } from 'vitest';
import { type CodeAction, CodeActionRequest, CodeActionResolveRequest } from 'vscode-languageserver/node';
import { example, PROCEDURE, steps } from '../ide/markedExample';
import { TestClient } from './client';

const text = steps('- remove: cover-screw');
const line = text.split('\n').findIndex((one) => one.includes('remove: cover-screw'));
const lazy = { codeAction: { dataSupport: true, resolveSupport: { properties: ['edit'] } } };

async function actions(client: TestClient, only?: string[]): Promise<readonly CodeAction[]> {
  client.open(PROCEDURE, text);
  const at = { line, character: 14 };
  const found = await client.connection.sendRequest(CodeActionRequest.type, {
    textDocument: { uri: client.uri(PROCEDURE) },
    range: { start: at, end: at },
    context: { diagnostics: [], ...(only === undefined ? {} : { only }) },
  });
  return (found ?? []) as CodeAction[];
}

test('a change that takes long is worked out once it is chosen', async () => {
  const client = await TestClient.start(example(text), { textDocument: lazy });
  const [action] = await actions(client, ['refactor']);
  expect(action).toMatchObject({
    title: 'Write the step that fits again what "Fit the wheel" takes off',
    kind: 'refactor.rewrite',
  });
  if (action === undefined) throw new Error('No action');
  expect(action.edit).toBeUndefined();
  const resolved = await client.connection.sendRequest(CodeActionResolveRequest.type, action);
  expect(JSON.stringify(resolved.edit)).toContain('- install: cover-screw\\n');
  client.change(PROCEDURE, `# new\n${text}`);
  expect((await client.connection.sendRequest(CodeActionResolveRequest.type, action)).edit).toBeUndefined();
});

test('a client that cannot ask again gets the edit at once', async () => {
  const client = await TestClient.start(example(text));
  const all = await actions(client, ['source.sortTools.witnessmark']);
  expect(all.map(({ title, kind }) => ({ title, kind }))).toEqual([
    { title: 'Sort the list of tools', kind: 'source.sortTools.witnessmark' },
  ]);
  expect(JSON.stringify(all[0]?.edit)).toContain('dial-gauge');
});
