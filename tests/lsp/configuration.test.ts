import { describe, expect, test } from 'vitest';
import { DiagnosticSeverity, DidChangeConfigurationNotification } from 'vscode-languageserver';
import manifest from '../../package.json';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { DEFAULT_CONFIGURATION, readConfiguration } from '../../server/src/lsp/clientConfiguration';
import { SHEET_HTML, type SheetHtmlResult } from '../../server/src/lsp/protocol';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const FAULTY = inStep('- tighten: cap-nut\n  torque: 45');
const RULE = 'torque-unit-missing';
const quiet = { severities: { [RULE]: 'info' } };

describe('what a client sends as its settings', () => {
  test('may be nested or dotted, with the section around it or without', () => {
    const wanted = { paper: 'letter', hints: { secondUnit: true, turn: false, kitItem: true } };
    for (const sent of [
      { paper: 'letter', hints: { turn: false } },
      { paper: 'letter', 'hints.turn': false },
      { witnessmark: { paper: 'letter', hints: { turn: false } } },
      { 'witnessmark.paper': 'letter', 'witnessmark.hints.turn': false },
    ]) {
      expect(readConfiguration(sent)).toMatchObject(wanted);
    }
  });

  test('may be anything, and what makes no sense is as if it were not there', () => {
    for (const sent of [
      null,
      undefined,
      7,
      'a4',
      [],
      { paper: 'a3', units: [], severities: 4, hints: { turn: 'no' } },
    ]) {
      expect(readConfiguration(sent)).toEqual(DEFAULT_CONFIGURATION);
    }
  });

  test('gives severities by rule and units by dimension', () => {
    const sent = {
      severities: { 'tool-unused': 'off', 'part-unknown': 'loud' },
      units: { torque: 'N·m', mass: ['g', 'oz', 'lb'] },
    };
    const read = readConfiguration(sent);
    expect([...read.severities]).toEqual([['tool-unused', 'off']]);
    expect([...read.units]).toEqual([
      ['torque', ['N·m']],
      ['mass', ['g', 'oz']],
    ]);
  });

  test('is declared in the manifest, each setting with its usual value and a description', () => {
    const declared = Object.entries(manifest.contributes.configuration.properties);
    const usual = Object.fromEntries(declared.map(([name, one]) => [name, one.default]));
    expect(readConfiguration(usual)).toEqual(DEFAULT_CONFIGURATION);
    // What documents are written in is theirs to say.
    const { units, severities, hints, lenses, writtenIn: _theirs, ...plain } = DEFAULT_CONFIGURATION;
    const nested = Object.entries({ hints, lenses }).flatMap(([name, one]) =>
      Object.keys(one).map((key) => `${name}.${key}`),
    );
    const names = [...Object.keys(plain), 'units', 'severities', ...nested].map((name) => `witnessmark.${name}`);
    expect(declared.map(([name]) => name).sort()).toEqual([...names, 'witnessmark.trace.server'].sort());
    for (const [, one] of declared) expect('description' in one || 'markdownDescription' in one).toBe(true);
  });
});

describe('settings of the client', () => {
  test('are asked for once for each folder, and hold where no settings document says', async () => {
    const files = { ...under('one', FAULTY.files), ...under('two', FAULTY.files) };
    const client = await TestClient.start(files, { folders: ['one', 'two'], configuration: quiet });
    for (const folder of ['one', 'two']) {
      const finding = await client.finding(`${folder}/${procedure}`, RULE);
      expect(finding.severity).toBe(DiagnosticSeverity.Information);
    }
    expect(client.askedFor).toEqual(
      ['one', 'two'].map((folder) => ({ scopeUri: client.uri(folder), section: 'witnessmark' })),
    );
  });

  test('come after the settings document of the folder', async () => {
    const settings = `witnessmark: 1\nseverities: { ${RULE}: warning }\n`;
    const client = await TestClient.start({ ...FAULTY.files, 'witnessmark.yaml': settings }, { configuration: quiet });
    expect((await client.finding(procedure, RULE)).severity).toBe(DiagnosticSeverity.Warning);
    client.writeOnDisk('witnessmark.yaml', 'witnessmark: 1\n');
    await client.shown(procedure, (all) =>
      all.some((one) => one.code === RULE && one.severity === DiagnosticSeverity.Information),
    );
  });

  test('are asked for again once they have changed, and every document is checked by them', async () => {
    const client = await TestClient.start(FAULTY.files, { configuration: quiet, refreshes: true });
    await client.finding(procedure, RULE);
    client.configure({ severities: { [RULE]: 'off' } });
    await client.noFinding(procedure, RULE);
    client.configure({});
    expect((await client.finding(procedure, RULE)).severity).toBe(DiagnosticSeverity.Error);
    expect(client.refreshed).toEqual(
      new Set(['workspace/inlayHint/refresh', 'workspace/codeLens/refresh', 'workspace/semanticTokens/refresh']),
    );
  });

  test('come with the first message where the client cannot be asked, and are told when they change', async () => {
    const client = await TestClient.start(FAULTY.files, { initializationOptions: quiet });
    expect((await client.finding(procedure, RULE)).severity).toBe(DiagnosticSeverity.Information);
    const settings = { witnessmark: { severities: { [RULE]: 'off' } } };
    await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings });
    await client.noFinding(procedure, RULE);
  });

  test('are as usual where the client refuses to say', async () => {
    const client = await TestClient.start(FAULTY.files, { configuration: new Error('no such thing here') });
    expect((await client.finding(procedure, RULE)).severity).toBe(DiagnosticSeverity.Error);
  });

  test('give the sheet its units and its paper', async () => {
    const whole = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m').files;
    const configuration = { units: { torque: ['lbf·in', 'N·m'] }, paper: 'letter' };
    const client = await TestClient.start(whole, { configuration });
    const params = { uri: client.uri(procedure) };
    const { html } = await client.connection.sendRequest<SheetHtmlResult>(SHEET_HTML.method, params);
    expect(html).toMatch(/lbf·in[^<]*<[^>]*>?[\s\S]{0,80}N·m/);
    expect(html).toContain('letter');
  });
});

function under(folder: string, files: Readonly<Record<string, string>>): Record<string, string> {
  return Object.fromEntries(Object.entries(files).map(([path, text]) => [`${folder}/${path}`, text]));
}
