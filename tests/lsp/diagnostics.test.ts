import { describe, expect, test } from 'vitest';
import {
  DiagnosticSeverity,
  DidChangeWorkspaceFoldersNotification,
  type TextDocumentEdit,
} from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { TestClient } from './client';

const { procedure, stores } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const faultyText = FAULTY.files[procedure] ?? '';

/** A procedure that uses a socket which the stores have, so that it breaks when they lose it. */
const LISTED = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');

describe('findings over the protocol', () => {
  test('a torque without a unit is shown where it stands, and goes when the fix is applied', async () => {
    const client = await TestClient.start(FAULTY.files);
    client.open(procedure, faultyText);
    const finding = await client.finding(procedure, 'torque-unit-missing');
    expect(finding).toMatchObject({ severity: DiagnosticSeverity.Error, source: 'witnessmark' });
    const line = faultyText.split('\n')[finding.range.start.line] ?? '';
    expect(line.slice(finding.range.start.character, finding.range.end.character)).toBe('45');

    const fix = (await client.fixes(procedure, finding)).find((action) => action.title === 'Write N·m');
    expect(fix?.diagnostics).toEqual([finding]);
    const change = fix?.edit?.documentChanges?.[0] as TextDocumentEdit;
    expect(change.textDocument).toEqual({ uri: client.uri(procedure), version: 1 });
    for (const edit of change.edits) client.change(procedure, edit as never);
    await client.noFinding(procedure, 'torque-unit-missing');
  });

  test('documents that nobody has opened are checked too', async () => {
    const client = await TestClient.start(FAULTY.files);
    const finding = await client.finding(procedure, 'torque-unit-missing');
    expect(finding.message).toContain('45');
  });

  test('positions count UTF-16 code units from the start of the line, whatever ends the lines', async () => {
    const text = inStep('- { tighten: cap-nut, say: "🔧🔧 <cap-nut>", torque: 45 }').files[procedure] ?? '';
    const client = await TestClient.start(FAULTY.files);
    client.open(procedure, text.replaceAll('\n', '\r\n'));
    const finding = await client.finding(procedure, 'torque-unit-missing');
    const line = text.split('\n').findIndex((one) => one.includes('🔧'));
    const character = (text.split('\n')[line] ?? '').indexOf('45');
    expect(finding.range).toEqual({ start: { line, character }, end: { line, character: character + 2 } });
  });

  test('a change inside a line that holds characters outside the basic plane goes to the right place', async () => {
    const text = inStep('- { tighten: cap-nut, say: "🔧🔧 <cap-nut>", torque: 4 }').files[procedure] ?? '';
    const client = await TestClient.start(FAULTY.files);
    client.open(procedure, text);
    const before = await client.finding(procedure, 'torque-unit-missing');
    client.change(procedure, { range: { start: before.range.end, end: before.range.end }, newText: '.6 N·m' });
    await client.noFinding(procedure, 'torque-unit-missing');
  });

  test('an open document outside every folder is checked with what stands beside it', async () => {
    const client = await TestClient.start(FAULTY.files, { folders: [] });
    client.open(procedure, LISTED.files[procedure] ?? '');
    const found = await client.shown(procedure, () => true);
    expect(found.map((one) => one.code)).not.toContain('document-not-found');
    expect(found.map((one) => one.code)).not.toContain('tool-unknown');
  });
});

describe('findings across files', () => {
  const withoutSocket = (LISTED.files[stores] ?? '').replace(/^ {2}socket-8:.*\n/m, '');

  test('a change of the stores on disk is felt by a procedure that is not open', async () => {
    const client = await TestClient.start({ ...LISTED.files, [stores]: withoutSocket });
    await client.finding(procedure, 'tool-unknown');
    client.writeOnDisk(stores, LISTED.files[stores] ?? '');
    await client.noFinding(procedure, 'tool-unknown');
  });

  test('what is typed into open stores counts before it is saved, and no longer once they are closed', async () => {
    const client = await TestClient.start(LISTED.files);
    client.open(stores, LISTED.files[stores] ?? '');
    client.change(stores, withoutSocket);
    await client.finding(procedure, 'tool-unknown');
    client.close(stores);
    await client.noFinding(procedure, 'tool-unknown');
  });

  test('nothing is concluded from stores that are deleted, until they are there again', async () => {
    const client = await TestClient.start({ ...LISTED.files, [stores]: withoutSocket });
    await client.finding(procedure, 'tool-unknown');
    client.removeOnDisk(stores);
    await client.noFinding(procedure, 'tool-unknown');
    client.writeOnDisk(stores, withoutSocket);
    await client.finding(procedure, 'tool-unknown');
  });

  test('the findings of a document that is deleted go with it', async () => {
    const client = await TestClient.start(FAULTY.files);
    await client.finding(procedure, 'torque-unit-missing');
    client.removeOnDisk(procedure);
    await client.shown(procedure, (diagnostics) => diagnostics.length === 0);
  });

  test('a document moved to another folder of the workspace keeps no findings at its old place', async () => {
    const client = await TestClient.start(FAULTY.files);
    await client.finding(procedure, 'torque-unit-missing');
    client.rename('procedures', 'work instructions');
    await client.shown(procedure, (diagnostics) => diagnostics.length === 0);
    await client.finding(procedure.replace('procedures', 'work instructions'), 'torque-unit-missing');
  });

  test('severities in the settings of the folder hold once they are written', async () => {
    const client = await TestClient.start({ ...FAULTY.files, 'witnessmark.yaml': 'witnessmark: 1\n' });
    await client.finding(procedure, 'torque-unit-missing');
    client.writeOnDisk('witnessmark.yaml', 'witnessmark: 1\nseverities: { torque-unit-missing: off }\n');
    await client.noFinding(procedure, 'torque-unit-missing');
  });
});

describe('several folders', () => {
  const inFolder = (folder: string) =>
    Object.fromEntries(Object.entries(FAULTY.files).map(([path, text]) => [`${folder}/${path}`, text]));

  test('are each checked, until one is taken out of the window', async () => {
    const client = await TestClient.start({ ...inFolder('one'), ...inFolder('two') }, { folders: ['one', 'two'] });
    await client.finding(`one/${procedure}`, 'torque-unit-missing');
    await client.finding(`two/${procedure}`, 'torque-unit-missing');
    const removed = [{ uri: client.uri('two'), name: 'two' }];
    await client.connection.sendNotification(DidChangeWorkspaceFoldersNotification.type, {
      event: { added: [], removed },
    });
    await client.shown(`two/${procedure}`, (diagnostics) => diagnostics.length === 0);
    client.writeOnDisk(`one/${procedure}`, faultyText.replace('45', '46'));
    await client.shown(`one/${procedure}`, (diagnostics) =>
      diagnostics.some(({ message }) => `${message}`.includes('46')),
    );
  });
});
