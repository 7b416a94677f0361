import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { DiagnosticSeverity, DidDeleteFilesNotification } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const RULE = 'torque-unit-missing';
const familyText = FAULTY.files[family] ?? '';
const text = FAULTY.files[procedure] ?? '';

describe('a family that moves', () => {
  test('is missed at once by what links to it, and found again where the link says', async () => {
    const client = await TestClient.start(FAULTY.files);
    client.open(procedure, text);
    await client.noFinding(procedure, 'document-not-found');
    const renamed = 'families/pellow-k2.family.yaml';
    client.removeOnDisk(family);
    client.writeOnDisk(renamed, familyText);
    await client.finding(procedure, 'document-not-found');
    client.change(procedure, text.replace('pellow-k1.family', 'pellow-k2.family'));
    await client.noFinding(procedure, 'document-not-found');
    expect((await client.finding(procedure, RULE)).severity).toBe(DiagnosticSeverity.Error);
  });

  test('together with its folder is missed by what is not open too', async () => {
    const client = await TestClient.start(FAULTY.files);
    await client.finding(procedure, RULE);
    rmSync(join(client.folder, 'families'), { recursive: true });
    await client.connection.sendNotification(DidDeleteFilesNotification.type, {
      files: [{ uri: client.uri('families') }],
    });
    await client.finding(procedure, 'document-not-found');
  });

  test('or changes without being saved is felt by what is open and what is not', async () => {
    const other = 'procedures/op-10.procedure.yaml';
    const client = await TestClient.start({ ...FAULTY.files, [other]: text.replace('OP-9', 'OP-10') });
    client.open(procedure, text);
    client.open(family, familyText);
    client.change(family, familyText.replaceAll('cap-nut', 'end-nut'));
    await client.finding(procedure, 'part-unknown');
    await client.finding(other, 'part-unknown');
    client.close(family);
    await client.noFinding(procedure, 'part-unknown');
    await client.noFinding(other, 'part-unknown');
  });
});

describe('two folders with the same names', () => {
  const under = (folder: string, severity: string) => ({
    ...Object.fromEntries(Object.entries(FAULTY.files).map(([path, one]) => [`${folder}/${path}`, one])),
    [`${folder}/witnessmark.yaml`]: `witnessmark: 1\nseverities: { ${RULE}: ${severity} }\n`,
  });

  test('have each its own settings', async () => {
    const files = { ...under('one', 'warning'), ...under('two', 'info') };
    const client = await TestClient.start(files, { folders: ['one', 'two'] });
    expect((await client.finding(`one/${procedure}`, RULE)).severity).toBe(DiagnosticSeverity.Warning);
    expect((await client.finding(`two/${procedure}`, RULE)).severity).toBe(DiagnosticSeverity.Information);
    client.writeOnDisk('two/witnessmark.yaml', `witnessmark: 1\nseverities: { ${RULE}: off }\n`);
    await client.noFinding(`two/${procedure}`, RULE);
    expect((await client.finding(`one/${procedure}`, RULE)).severity).toBe(DiagnosticSeverity.Warning);
  });

  test('end at the inner one where one lies in the other', async () => {
    const files = {
      ...under('inner', 'warning'),
      'witnessmark.yaml': `witnessmark: 1\nseverities: { ${RULE}: off }\n`,
    };
    delete (files as Record<string, string>)['inner/witnessmark.yaml'];
    const client = await TestClient.start(files, { folders: ['.', 'inner'] });
    expect((await client.finding(`inner/${procedure}`, RULE)).severity).toBe(DiagnosticSeverity.Error);
  });
});
