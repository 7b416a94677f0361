import { describe, expect, test } from 'vitest';
import {
  DidChangeConfigurationNotification,
  type InlayHint,
  InlayHintRequest,
  InlayHintResolveRequest,
  type MarkupContent,
} from 'vscode-languageserver/node';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const EXAMPLE = inStep('- install: cover-seal\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m');
const TEXT = EXAMPLE.files[procedure] ?? '';

async function hintsIn(client: TestClient, from: string, to = ''): Promise<InlayHint[]> {
  const lines = new LineIndex(TEXT);
  const end = to === '' ? TEXT.length : TEXT.indexOf(to);
  const range = { start: lines.position(TEXT.indexOf(from)), end: lines.position(end) };
  const params = { textDocument: { uri: client.uri(procedure) }, range };
  return (await client.connection.sendRequest(InlayHintRequest.type, params)) ?? [];
}

const labels = (hints: readonly InlayHint[]) => hints.map(({ label }) => label);

describe('inlay hints', () => {
  test('of the asked range alone, each behind its word, with a tooltip when it is pointed at', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    client.open(procedure, TEXT);
    expect(labels(await hintsIn(client, 'install:', 'tighten:'))).toEqual(['item 10']);
    const [turn, unit] = await hintsIn(client, 'tighten:');
    const lines = new LineIndex(TEXT);
    expect(turn?.position).toEqual(lines.position(TEXT.indexOf('cap-nut') + 'cap-nut'.length));
    expect(unit).toMatchObject({ label: '≈ 41 ± 3 lbf·in', paddingLeft: true });
    if (turn === undefined) throw new Error('No hint');
    const resolved = await client.connection.sendRequest(InlayHintResolveRequest.type, turn);
    expect((resolved.tooltip as MarkupContent).value).toContain('| **cap nut** | part: nut · `cap-nut` |');
  });

  test('as they were chosen, from the next time they are asked for', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    expect(await hintsIn(client, 'install:')).toHaveLength(3);
    const settings = { witnessmark: { hints: { turn: false, kitItem: false } } };
    await client.connection.sendNotification(DidChangeConfigurationNotification.type, { settings });
    expect(labels(await hintsIn(client, 'install:'))).toEqual(['≈ 41 ± 3 lbf·in']);
  });

  test('of no document are none', async () => {
    const client = await TestClient.start({});
    const range = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
    const params = { textDocument: { uri: client.uri('nowhere.procedure.yaml') }, range };
    expect(await client.connection.sendRequest(InlayHintRequest.type, params)).toBeNull();
  });
});
