import { cpSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, expect, test, vi } from 'vitest';
import type { Connection, InitializeParams, TextDocumentContentChangeEvent } from 'vscode-languageserver';
import { DocumentText } from '../../server/src/core/text/documentText';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { applyChanges } from '../../server/src/lsp/openDocument';
import { Session } from '../../server/src/lsp/session';
import { NodeHost } from '../../server/src/node/nodeHost';
import { seededRandom } from '../support/seededRandom';
import { temporaryFiles } from '../support/temporaryFiles';

const SEED = Number(process.env.SEED ?? 20261125);
const SAMPLE = 'procedures/h9-rebuild.procedure.yaml';

afterEach(() => {
  vi.restoreAllMocks();
});

test(`changes by range leave the text that they leave in a string (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  const below = (limit: number): number => Math.floor(random() * limit);
  const added = ['', 'x', '\n', '\r', '\r\n', '🔧', '\ud83d', 'two\r\nlines\n', '\ufeff'];
  let text = '\ufeffone\r\ntwo 🔧\n'.repeat(12);
  let content = DocumentText.of(text, 16);
  for (let round = 0; round < 1500; round++) {
    const changes: TextDocumentContentChangeEvent[] = [];
    for (let left = 1 + below(3); left > 0; left--) {
      const lines = new LineIndex(text);
      const from = below(text.length + 1);
      const to = Math.min(text.length, from + (below(30) === 0 ? below(150) : below(4)));
      const start = lines.position(from);
      const end = lines.position(to);
      const put = added[below(added.length)] ?? '';
      // A client may ask to replace all of it instead.
      const isWhole = below(60) === 0;
      // A place between CR and LF is the end of the line before it.
      if (isWhole) text = text.slice(0, 200);
      else
        text = text.slice(0, lines.offset(start)) + put + text.slice(Math.max(lines.offset(start), lines.offset(end)));
      changes.push(isWhole ? { text } : { range: { start, end }, text: put });
    }
    content = applyChanges(content, changes);
    expect(content.pieces.texts.join('')).toBe(text);
  }
});

/** A session with the samples open, as a client without a screen has it. */
function sessionOnSamples() {
  const folder = temporaryFiles({});
  cpSync('sample-procedures', join(folder, 'samples'), { recursive: true });
  const problems: string[] = [];
  const sent: { readonly uri: string; readonly count: number }[] = [];
  const connection = {
    sendDiagnostics: async ({ uri, diagnostics }: { uri: string; diagnostics: unknown[] }) =>
      void sent.push({ uri, count: diagnostics.length }),
    console: { error: (problem: string) => problems.push(problem) },
  } as unknown as Connection;
  const capabilities = { textDocument: { publishDiagnostics: { relatedInformation: true } } };
  const params: InitializeParams = { processId: null, rootUri: pathToFileURL(folder).href, capabilities };
  const session = new Session(connection, new NodeHost(connection), params);
  return { session, folder, problems, sent };
}

test('from a key to its findings, the text is never put together as one string', async () => {
  const { session, folder, problems, sent } = sessionOnSamples();
  const path = join(folder, 'samples', SAMPLE);
  const uri = decodeURIComponent(pathToFileURL(path).href);
  const text = readFileSync(path, 'utf8');
  const line = text.split('\n').findIndex((one) => one.startsWith('title: '));
  const end = { line, character: 'title: '.length };
  const type = async (version: number, put: string) => {
    const before = session.openDocument(uri)?.content ?? DocumentText.of(text);
    const content = applyChanges(before, [{ range: { start: end, end }, text: put }]);
    session.setOpen({ uri, clientUri: uri, version, content });
    session.diagnostics.typed(uri);
    await session.diagnostics.settled();
  };
  await type(1, 'x');
  const whole = vi.spyOn(DocumentText.prototype, 'whole', 'get');
  // The second of them breaks the text, which has findings.
  await type(2, 'y');
  await type(3, '"');
  expect(whole).not.toHaveBeenCalled();
  expect(problems).toEqual([]);
  expect(sent.at(-1)?.count).toBeGreaterThan(0);
  expect(session.workspace.snapshot.document(uri)?.text).toContain('title: "yx');
  expect(whole).toHaveBeenCalled();
});
