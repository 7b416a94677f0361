import { expect, test } from 'vitest';
import { type CodeLens, CodeLensRequest, CodeLensResolveRequest } from 'vscode-languageserver/node';
import { example, FAMILY, PROCEDURE, steps } from '../ide/markedExample';
import { type ClientOptions, TestClient } from './client';

const text = steps('- install: wheel');

async function start(options: ClientOptions = {}): Promise<TestClient> {
  const client = await TestClient.start(example(text), options);
  const family = example(text)[FAMILY] ?? '';
  client.open(FAMILY, family);
  return client;
}

async function lensesOf(client: TestClient): Promise<readonly CodeLens[]> {
  const textDocument = { uri: client.uri(FAMILY) };
  return (await client.connection.sendRequest(CodeLensRequest.type, { textDocument })) ?? [];
}

/** The lens above the part `wheel`, counted. */
async function ofTheWheel(client: TestClient): Promise<CodeLens> {
  const lens = (await lensesOf(client)).find(({ data }) => (data as { id?: string } | undefined)?.id === 'wheel');
  if (lens === undefined) throw new Error('No lens');
  expect(lens.command).toBeUndefined();
  return client.connection.sendRequest(CodeLensResolveRequest.type, lens);
}

test('a lens counts when it is seen, and shows the uses to a client that has the command', async () => {
  const client = await start({ initializationOptions: { showUses: true } });
  const { range, command } = await ofTheWheel(client);
  const line = text.split('\n').findIndex((one) => one.includes('install: wheel'));
  expect(command).toEqual({
    title: 'used in 1 step',
    command: 'witnessmark.showUses',
    arguments: [
      client.uri(FAMILY),
      range.start,
      [
        {
          uri: client.uri(PROCEDURE),
          range: { start: { line, character: 21 }, end: { line, character: 26 } },
        },
      ],
    ],
  });
});

test('it counts anew once a procedure was changed', async () => {
  const client = await start();
  expect((await ofTheWheel(client)).command).toEqual({ title: 'used in 1 step', command: '' });
  client.open(PROCEDURE, text.replace('install: wheel', 'install: cover'));
  expect((await ofTheWheel(client)).command?.title).toBe('used in no step');
  client.change(
    PROCEDURE,
    text.concat('      - step: turn-it\n        title: Turn it\n        do:\n          - inspect: wheel\n'),
  );
  expect((await ofTheWheel(client)).command?.title).toBe('used in 2 steps');
});

test('no lens is sent that was switched off', async () => {
  const client = await start({ configuration: { lenses: { uses: false } } });
  expect(await lensesOf(client)).toEqual([]);
});
