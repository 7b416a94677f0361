import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { expect, test } from 'vitest';
import type { Connection, InitializeParams } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { DocumentText } from '../../server/src/core/text/documentText';
import { Session } from '../../server/src/lsp/session';
import { NodeHost } from '../../server/src/node/nodeHost';
import { temporaryFiles } from '../support/temporaryFiles';

const { files } = inStep('- tighten: cap-nut\n  torque: 45');

/** A session without a client, whose host writes down what it is asked about memory. */
function sessionOn(folder: string) {
  const asked: boolean[] = [];
  const problems: string[] = [];
  const connection = {
    sendDiagnostics: async () => {},
    console: { error: (problem: string) => problems.push(problem) },
  } as unknown as Connection;
  const host = Object.assign(new NodeHost(connection), {
    spareMemory: (isSpared: boolean) => void asked.push(isSpared),
  });
  const uri = pathToFileURL(folder).href;
  const params: InitializeParams = { processId: null, rootUri: uri, capabilities: {} };
  return { session: new Session(connection, host, params), asked, problems };
}

test('memory is spared while the documents of a folder are checked, and no longer', async () => {
  const { session, asked, problems } = sessionOn(temporaryFiles(files));
  await session.scanFolders();
  await session.diagnostics.settled();
  expect(asked).toEqual([true, false]);
  expect(problems).toEqual([]);
});

test('it is not spared where somebody types in the only document', async () => {
  const folder = temporaryFiles({});
  const { session, asked } = sessionOn(folder);
  const uri = pathToFileURL(join(folder, EXAMPLE_PATHS.procedure)).href;
  session.setOpen({ uri, clientUri: uri, version: 1, content: DocumentText.of(files[EXAMPLE_PATHS.procedure] ?? '') });
  session.diagnostics.typed(uri);
  await session.diagnostics.settled();
  expect(session.diagnostics.found.has(uri)).toBe(true);
  expect(asked).toEqual([]);
});
