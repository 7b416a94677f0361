import { describe, expect, test } from 'vitest';
import {
  type SemanticTokens,
  type SemanticTokensDelta,
  SemanticTokensDeltaRequest,
  SemanticTokensRangeRequest,
  SemanticTokensRequest,
} from 'vscode-languageserver/node';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { TestClient } from './client';

const { procedure } = EXAMPLE_PATHS;
const EXAMPLE = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');
const TEXT = EXAMPLE.files[procedure] ?? '';

/** The tokens in words: what is written, and its type and modifiers by the legend that the server announced. */
function inWords(client: TestClient, text: string, data: readonly number[]): string[] {
  const legend = client.initialized?.capabilities.semanticTokensProvider?.legend;
  const lines = new LineIndex(text);
  const words: string[] = [];
  let [line, character] = [0, 0];
  for (let i = 0; i < data.length; i += 5) {
    const [down = 0, along = 0, length = 0, type = 0, bits = 0] = data.slice(i, i + 5);
    character = down === 0 ? character + along : along;
    line += down;
    const at = lines.offset({ line, character });
    const modifiers = (legend?.tokenModifiers ?? []).filter((_, bit) => (bits & (1 << bit)) !== 0);
    words.push(`${text.slice(at, at + length)} ${[legend?.tokenTypes[type], ...modifiers].join('.')}`);
  }
  return words;
}

describe('semantic tokens', () => {
  test('of a document, of a range of it, and what has changed since', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    client.open(procedure, TEXT);
    const textDocument = { uri: client.uri(procedure) };
    const full = (await client.connection.sendRequest(SemanticTokensRequest.type, { textDocument })) as SemanticTokens;
    const words = inWords(client, TEXT, full.data);
    expect(words).toContain('cap-nut part');
    expect(words).toContain('socket-10 tool.unused');
    expect(words.slice(words.indexOf('tighten keyword')).slice(0, 6)).toEqual([
      'tighten keyword',
      'cap-nut part',
      '4.6 number',
      '0.3 number',
      'N·m unit',
      'torque-wrench-10 tool',
    ]);

    const lines = new LineIndex(TEXT);
    const start = lines.position(TEXT.indexOf('torque: 4.6'));
    const end = { line: start.line, character: start.character + 30 };
    const part = await client.connection.sendRequest(SemanticTokensRangeRequest.type, {
      textDocument,
      range: { start, end },
    });
    expect(inWords(client, TEXT, part?.data ?? [])).toEqual(['4.6 number', '0.3 number', 'N·m unit']);

    const changed = TEXT.replace('4.6 ± 0.3', '4.6');
    client.change(procedure, changed);
    const delta = (await client.connection.sendRequest(SemanticTokensDeltaRequest.type, {
      textDocument,
      previousResultId: full.resultId ?? '',
    })) as SemanticTokensDelta;
    const [edit] = delta.edits;
    expect(delta.edits).toHaveLength(1);
    expect(edit?.deleteCount).toBeLessThanOrEqual(10);
    const data = full.data.toSpliced(edit?.start ?? 0, edit?.deleteCount ?? 0, ...(edit?.data ?? []));
    expect(inWords(client, changed, data)).toEqual(words.filter((word) => word !== '0.3 number'));
  });

  test('all of them where the client has not got the last ones, none where there is no document', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const delta = await client.connection.sendRequest(SemanticTokensDeltaRequest.type, {
      textDocument: { uri: client.uri(procedure) },
      previousResultId: 'of another day',
    });
    expect(inWords(client, TEXT, (delta as SemanticTokens).data)).toContain('cap-nut part');
    const nowhere = { textDocument: { uri: client.uri('nowhere.procedure.yaml') } };
    expect((await client.connection.sendRequest(SemanticTokensRequest.type, nowhere))?.data).toEqual([]);
  });
});
