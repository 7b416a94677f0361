import { expect, test } from 'vitest';
import {
  CancellationTokenSource,
  type FullDocumentDiagnosticReport,
  LSPErrorCodes,
  type WorkspaceDiagnosticReport,
  WorkspaceDiagnosticRequest,
  type WorkspaceDocumentDiagnosticReport,
} from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { TestClient } from './client';

const { procedure, stores } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const faultyText = FAULTY.files[procedure] ?? '';
const LISTED = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');
const withoutSocket = (LISTED.files[stores] ?? '').replace(/^ {2}socket-8:.*\n/m, '');
const RULE = 'torque-unit-missing';
const codesIn = (report: unknown) => (report as FullDocumentDiagnosticReport).items.map((one) => one.code);

function workspace(client: TestClient, previous: WorkspaceDocumentDiagnosticReport[] = []) {
  const previousResultIds = previous.map(({ uri, resultId = '' }) => ({ uri, value: resultId }));
  return client.connection.sendRequest(WorkspaceDiagnosticRequest.type, { previousResultIds });
}

function reportFor(client: TestClient, path: string, { items }: WorkspaceDiagnosticReport) {
  const report = items.find((one) => one.uri === client.uri(path));
  if (report === undefined) throw new Error(`Nothing is said of ${path}`);
  return report;
}

test('whoever asks is announced that it may, and is sent nothing', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  expect(client.initialized?.capabilities.diagnosticProvider).toMatchObject({
    interFileDependencies: true,
    workspaceDiagnostics: true,
  });
  client.open(procedure, faultyText);
  expect(codesIn(await client.pull(procedure))).toContain(RULE);
  await workspace(client);
  expect(client.isPushed).toBe(false);
});

test('whoever does not ask, or prefers to be sent them, is sent them', async () => {
  for (const options of [{}, { pulls: true, initializationOptions: { diagnostics: 'push' } }]) {
    const client = await TestClient.start(FAULTY.files, options);
    expect(client.initialized?.capabilities.diagnosticProvider).toBeUndefined();
    await client.finding(procedure, RULE);
  }
});

test('the same findings are told once', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  client.open(procedure, faultyText);
  const first = await client.pull(procedure);
  expect(await client.pull(procedure, first.resultId)).toEqual({ kind: 'unchanged', resultId: first.resultId });
  client.change(procedure, faultyText.replace('45', '4.6 N·m'));
  const second = await client.pull(procedure, first.resultId);
  expect(second.kind).toBe('full');
  expect(codesIn(second)).not.toContain(RULE);
});

test('of a document that does not exist nothing is found', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  expect(await client.pull('procedures/none.procedure.yaml')).toMatchObject({ kind: 'full', items: [] });
});

test('all documents of the folder are told of, and what has not changed is told as such', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  const first = await workspace(client);
  expect(first.items.map((one) => one.uri).sort()).toEqual(
    Object.keys(FAULTY.files)
      .map((path) => client.uri(path))
      .sort(),
  );
  expect(codesIn(reportFor(client, procedure, first))).toContain(RULE);
  expect(reportFor(client, procedure, first).version).toBeNull();
  const second = await workspace(client, first.items);
  expect(new Set(second.items.map((one) => one.kind))).toEqual(new Set(['unchanged']));
  client.removeOnDisk(procedure);
  const third = await workspace(client, first.items);
  expect(reportFor(client, procedure, third)).toMatchObject({ kind: 'full', items: [] });
});

test('who takes them one by one is told of every difference, until it has enough', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  const reports: WorkspaceDocumentDiagnosticReport[] = [];
  let wake = () => {};
  client.connection.onProgress(WorkspaceDiagnosticRequest.partialResult, 'all', ({ items }) => {
    reports.push(...items);
    wake();
  });
  const last = async (wanted: (codes: readonly unknown[]) => boolean) => {
    for (;;) {
      const report = reports.filter((one) => one.uri === client.uri(procedure)).at(-1);
      if (report?.kind === 'full' && wanted(codesIn(report))) return;
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
    }
  };
  const enough = new CancellationTokenSource();
  const params = { previousResultIds: [], partialResultToken: 'all' };
  const answer = client.connection.sendRequest(WorkspaceDiagnosticRequest.type, params, enough.token);
  await last((codes) => codes.includes(RULE));
  client.writeOnDisk(procedure, faultyText.replace('45', '4.6 N·m'));
  await last((codes) => !codes.includes(RULE));
  client.removeOnDisk(procedure);
  await last((codes) => codes.length === 0);
  enough.cancel();
  await expect(answer).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
});

test('who has asked for an open document is told to ask again once another file has changed what is found', async () => {
  const client = await TestClient.start(LISTED.files, { pulls: true, refreshes: true });
  client.open(procedure, LISTED.files[procedure] ?? '');
  expect(codesIn(await client.pull(procedure))).not.toContain('tool-unknown');
  client.writeOnDisk(stores, withoutSocket);
  await client.refresh('workspace/diagnostic/refresh');
  expect(codesIn(await client.pull(procedure))).toContain('tool-unknown');
});

test('an answer for a text that has moved on is of the newest text, or cancelled', async () => {
  const client = await TestClient.start(FAULTY.files, { pulls: true });
  client.open(procedure, faultyText);
  const stop = new CancellationTokenSource();
  const params = { textDocument: { uri: client.uri(procedure) } };
  const early = client.connection.sendRequest('textDocument/diagnostic', params, stop.token);
  stop.cancel();
  client.change(procedure, faultyText.replace('45', '4.6 N·m'));
  const late = client.pull(procedure);
  await expect(early).rejects.toMatchObject({ code: LSPErrorCodes.RequestCancelled });
  expect(codesIn(await late)).not.toContain(RULE);
});
