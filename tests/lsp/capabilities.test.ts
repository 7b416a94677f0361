import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import type { Position, ServerCapabilities } from 'vscode-languageserver';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import {
  CLIENT_FOLDER,
  CLIENT_TEXT,
  CLIENT_WRITE,
  type ClientFileParams,
  type ClientTextResult,
  PRODUCT_FILE,
  SHEET_CHANGED,
} from '../../server/src/lsp/protocol';
import { type ProtocolShapes, protocolShapes } from '../support/protocolShapes';
import { TestClient } from './client';
import { WHOLE_CLIENT } from './wholeClient';

const root = join(import.meta.dirname, '../..');
const { procedure, kit, stores, family } = EXAMPLE_PATHS;
const { files } = inStep('- tighten: cap-nut\n  torque: 45\n  with: [torque-wrench-10, socket-8]');
const text = files[procedure] ?? '';
/** A folder that only the client can reach. */
const FAR = 'far:/bay-2';
const wholeText = { start: { line: 0, character: 0 }, end: { line: 999, character: 0 } };
const options = { tabSize: 2, insertSpaces: true };

/** The place of the last character of the first such word. */
function at(word: string): Position {
  const before = text.slice(0, text.indexOf(word) + word.length - 1).split('\n');
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

type Params = (textDocument: { uri: string }, answers: ReadonlyMap<string, unknown>, inFolder: Locate) => object;
type Locate = (path: string) => string;
const inDocument: Params = (textDocument) => ({ textDocument });
const atNut: Params = (textDocument) => ({ textDocument, position: at('cap-nut') });
const inRange: Params = (textDocument) => ({ textDocument, range: wholeText, options });
const first =
  (method: string): Params =>
  (_, answers) =>
    firstIn(answers.get(method), method);
const changes =
  (path: string): Params =>
  () => ({ files: [{ uri: `${FAR}/${path}`, oldUri: `${FAR}/a`, newUri: `${FAR}/b` }] });

/** What each request is asked with. A feature that is announced without a line here fails the test. */
const REQUESTS: Readonly<Record<string, Params>> = {
  'textDocument/hover': atNut,
  'textDocument/completion': (textDocument) => ({ textDocument, position: at('tighten: c') }),
  'completionItem/resolve': first('textDocument/completion'),
  'textDocument/definition': atNut,
  'textDocument/references': (textDocument) => ({
    textDocument,
    position: at('cap-nut'),
    context: { includeDeclaration: true },
    workDoneToken: 'references',
  }),
  'textDocument/documentHighlight': atNut,
  'textDocument/prepareRename': atNut,
  'textDocument/rename': (textDocument) => ({
    textDocument,
    position: at('cap-nut'),
    newName: 'end-nut',
    workDoneToken: 'rename',
  }),
  'textDocument/documentSymbol': inDocument,
  'workspace/symbol': () => ({ query: 'nut' }),
  'workspaceSymbol/resolve': first('workspace/symbol'),
  'textDocument/foldingRange': inDocument,
  'textDocument/selectionRange': (textDocument) => ({ textDocument, positions: [at('cap-nut')] }),
  'textDocument/documentLink': inDocument,
  'documentLink/resolve': first('textDocument/documentLink'),
  'textDocument/codeAction': (textDocument) => ({ textDocument, range: wholeText, context: { diagnostics: [] } }),
  'codeAction/resolve': first('textDocument/codeAction'),
  'textDocument/codeLens': (_, __, inFolder) => ({ textDocument: { uri: inFolder(family) } }),
  'codeLens/resolve': first('textDocument/codeLens'),
  'textDocument/formatting': inRange,
  'textDocument/rangeFormatting': inRange,
  'textDocument/rangesFormatting': (textDocument) => ({ textDocument, ranges: [wholeText], options }),
  'textDocument/onTypeFormatting': (textDocument) => ({ textDocument, position: at('cap-nut'), ch: '\n', options }),
  'textDocument/semanticTokens/full': inDocument,
  'textDocument/semanticTokens/full/delta': (textDocument, answers) => {
    const { resultId } = answers.get('textDocument/semanticTokens/full') as { resultId: string };
    return { textDocument, previousResultId: resultId };
  },
  'textDocument/semanticTokens/range': inRange,
  'textDocument/inlayHint': inRange,
  'inlayHint/resolve': first('textDocument/inlayHint'),
  'textDocument/linkedEditingRange': atNut,
  'textDocument/prepareCallHierarchy': atNut,
  'textDocument/diagnostic': inDocument,
  'workspace/diagnostic': () => ({ previousResultIds: [], workDoneToken: 'all' }),
  'workspace/willRenameFiles': changes(procedure),
  'workspace/willDeleteFiles': changes(procedure),
  'witnessmark/builds': ({ uri }) => ({ uri }),
  'witnessmark/buildsPassing': ({ uri }) => ({ uri }),
  'witnessmark/failingBuilds': ({ uri }) => ({ uri }),
  'witnessmark/sheetHtml': ({ uri }) => ({ uri }),
  'witnessmark/sheetPatch': ({ uri }) => ({ uri }),
  'witnessmark/sheetPages': ({ uri }) => ({ uri }),
  'witnessmark/chartHtml': ({ uri }) => ({ uri }),
  'witnessmark/sources': ({ uri }) => ({ uri }),
  'witnessmark/compare': ({ uri }) => ({ uri, label: 'then', texts: [] }),
  'witnessmark/printSheet': ({ uri }) => ({ uri, target: `${FAR}/sheet.pdf` }),
};

/** What each notification says, for those that the client of these tests does not send anyway. */
const NOTIFICATIONS: Readonly<Record<string, Params>> = {
  'textDocument/didSave': inDocument,
  'textDocument/willSave': (textDocument) => ({ textDocument, reason: 1 }),
  'workspace/didChangeConfiguration': () => ({ settings: null }),
  'workspace/didChangeWorkspaceFolders': () => ({ event: { added: [], removed: [{ uri: FAR, name: FAR }] } }),
  'workspace/didCreateFiles': changes(procedure),
  'workspace/didRenameFiles': changes(procedure),
  'workspace/didDeleteFiles': changes(procedure),
};

/** What the server asks or tells of its own accord; the client of this test answers. */
const OF_THE_SERVER = [SHEET_CHANGED, CLIENT_TEXT, CLIENT_FOLDER, CLIENT_WRITE].map(({ method }) => method);

test('everything that the packed server announces answers over standard input and output', async () => {
  const built = spawnSync(process.execPath, ['server/dev/build.mjs', '--if-stale'], {
    cwd: root,
    stdio: ['ignore', 'ignore', 'inherit'],
  });
  expect(built.status).toBe(0);
  const program = join(root, 'server/dist/server.js');
  const client = await TestClient.start(files, {
    program,
    capabilities: WHOLE_CLIENT,
    configuration: {},
    otherFolders: [FAR],
  });
  answerForFarFiles(client);
  client.open(procedure, text);
  const shapes = await protocolShapes();
  const { capabilities } = client.initialized ?? { capabilities: {} };
  const { watch, connection } = client;
  const textDocument = { uri: client.uri(procedure) };
  const answers = new Map<string, unknown>();

  const announced = methodsFor(shapes, capabilities);
  const isAsked = (method: string) => shapes.methods[method]?.is === 'request' && !OF_THE_SERVER.includes(method);
  for (const method of announced.filter(isAsked)) {
    const params = REQUESTS[method];
    if (params === undefined) throw new Error(`${method} is announced, and nothing here asks for it`);
    const answer = await connection.sendRequest<unknown>(
      method,
      params(textDocument, answers, (path) => client.uri(path)),
    );
    expect(answer, method).not.toBeNull();
    answers.set(method, answer);
  }
  const sheetChanged = new Promise((resolve) => connection.onNotification(SHEET_CHANGED.method, resolve));
  client.change(procedure, text.replace('45', '46'));
  await sheetChanged;
  client.writeOnDisk(stores, files[stores] ?? '');
  for (const [method, params] of Object.entries(NOTIFICATIONS)) {
    if (!announced.includes(method) && !watch.registered.has(method)) continue;
    await connection.sendNotification(
      method,
      params(textDocument, answers, (path) => client.uri(path)),
    );
  }
  await client.pull(kit);
  client.close(procedure);
  await connection.sendRequest('shutdown');
  await connection.sendNotification('exit');

  const known = new Set([...watch.exercised, ...watch.heard]);
  expect([...announced, ...watch.registered].filter((method) => !known.has(method))).toEqual([]);
  expect(unexplained(shapes, capabilities)).toEqual([]);
}, 240_000);

test('what is announced without being asked for here would be found', async () => {
  const shapes = await protocolShapes();
  const capabilities = { hoverProvider: true, colorProvider: true, monikerProvider: {}, renameProvider: true } as const;
  const methods = methodsFor(shapes, capabilities);
  expect(methods.filter((method) => ![...Object.keys(REQUESTS), ...OF_THE_SERVER].includes(method))).toEqual([
    'textDocument/documentColor',
    'textDocument/colorPresentation',
    'textDocument/moniker',
  ]);
  expect(methods).not.toContain('textDocument/prepareRename');
  expect(unexplained(shapes, { hoveringProvider: true } as ServerCapabilities)).toEqual(['hoveringProvider']);
});

/** The methods that belong to what is announced, and all of our own. Resolving comes after what is resolved. */
function methodsFor(shapes: ProtocolShapes, capabilities: ServerCapabilities): string[] {
  const isOn = (path: string | undefined) => {
    const value = path
      ?.split('.')
      .reduce<unknown>((one, key) => (one as Record<string, unknown> | undefined)?.[key], capabilities);
    return value !== undefined && value !== false && value !== null;
  };
  const standard = Object.entries(shapes.methods).filter(([, { announcedBy }]) => isOn(announcedBy));
  // Which folders there are is asked by the server, and only by one that was not told.
  const asked = standard.map(([method]) => method).filter((method) => method !== 'workspace/workspaceFolders');
  // Asked by a server in a browser alone.
  const own = Object.keys(shapes.methods).filter(
    (one) => one.startsWith('witnessmark/') && one !== PRODUCT_FILE.method,
  );
  return [...asked, ...own];
}

/** What is announced by a name that no method of the protocol answers to. */
function unexplained(shapes: ProtocolShapes, capabilities: ServerCapabilities): string[] {
  const named = new Set(Object.values(shapes.methods).flatMap(({ announcedBy }) => announcedBy?.split('.')[0] ?? []));
  return Object.keys(capabilities).filter((key) => !named.has(key) && key !== 'positionEncoding');
}

function firstIn(answer: unknown, method: string): object {
  const list = Array.isArray(answer) ? answer : (answer as { items?: unknown[] } | undefined)?.items;
  const one = list?.[0];
  if (typeof one !== 'object' || one === null) throw new Error(`${method} has given nothing that could be resolved`);
  return one;
}

/** One small document in a folder that is not on disk, and no more. */
function answerForFarFiles({ connection }: TestClient): void {
  const name = 'bay-2.stores.yaml';
  connection.onRequest(CLIENT_FOLDER.method, ({ uri }: ClientFileParams) => ({
    entries: uri === FAR ? [{ name, is: 'file' }] : [],
  }));
  connection.onRequest<ClientTextResult, void>(CLIENT_TEXT.method, ({ uri }: ClientFileParams) =>
    uri.endsWith(name) ? { is: 'text', text: files[stores] ?? '' } : { is: 'missing' },
  );
  connection.onRequest(CLIENT_WRITE.method, () => ({ is: 'written' }));
}
