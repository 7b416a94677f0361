import { expect, test } from 'vitest';
import { type ProgressToken, ReferencesRequest, RenameRequest, WorkDoneProgress } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { Cancelled } from '../../server/src/lsp/cancelled';
import { folderSymbols } from '../../server/src/lsp/folderSymbols';
import { snapshotOfFolders } from '../../server/src/lsp/folderTexts';
import type { Session } from '../../server/src/lsp/session';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const { files } = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m');
const text = files[procedure] ?? '';

/** The place of the nut in the procedure. */
function atNut(client: TestClient) {
  const lines = text.slice(0, text.indexOf('cap-nut')).split('\n');
  const position = { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
  return { textDocument: { uri: client.uri(procedure) }, position };
}

test('who waits for references or a renaming is told how far it has come', async () => {
  const client = await TestClient.start(files);
  const kinds: string[] = [];
  const hear = (token: ProgressToken) =>
    client.connection.onProgress(WorkDoneProgress.type, token, ({ kind }) => void kinds.push(kind));
  hear('references');
  const context = { includeDeclaration: true };
  await client.connection.sendRequest(ReferencesRequest.type, {
    ...atNut(client),
    context,
    workDoneToken: 'references',
  });
  const all = Object.keys(files).map(() => 'report');
  expect(kinds).toEqual(['begin', ...all, 'end']);
  kinds.length = 0;
  hear('rename');
  const params = { ...atNut(client), newName: 'end-nut', workDoneToken: 'rename' };
  await client.connection.sendRequest(RenameRequest.type, params);
  expect(kinds).toEqual(['begin', ...all, 'end']);
});

test('no further document is read once nobody waits any more', async () => {
  for (const work of [
    (session: Session, token: never) =>
      snapshotOfFolders(session, 'file:///a.kit.yaml', () => false, { token, progress }),
    (session: Session, token: never) => folderSymbols(session, token),
  ]) {
    const { session, token, read } = folderOfThousand(3);
    await expect(work(session, token as never)).rejects.toBeInstanceOf(Cancelled);
    expect(read()).toBeLessThan(8);
  }
});

const progress = { begin: () => {}, report: () => {}, done: () => {} };

/** A session on a folder of a thousand kits, of which a few are read before whoever has asked has enough. */
function folderOfThousand(enough: number) {
  let read = 0;
  const token = {
    get isCancellationRequested() {
      return read > enough;
    },
  };
  const session = {
    openUris: [],
    folders: ['file:///folder'],
    openDocument: () => undefined,
    workspace: { snapshot: { roots: [] } },
    files: {
      read: async () => {
        read++;
        return { is: 'text', text: 'witnessmark: 1\n' };
      },
    },
    host: {
      async *documentsBelow(folder: string) {
        for (let i = 0; i < 1000; i++) yield `${folder}/${i}.kit.yaml`;
      },
    },
  } as unknown as Session;
  return { session, token, read: () => read };
}
