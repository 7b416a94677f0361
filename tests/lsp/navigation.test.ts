import { describe, expect, test } from 'vitest';
import {
  DefinitionRequest,
  DocumentHighlightKind,
  DocumentHighlightRequest,
  type Location,
  type LocationLink,
  type Position,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  type TextDocumentEdit,
} from 'vscode-languageserver/node';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { example, FAMILY, KIT, PROCEDURE, STORES, steps } from '../ide/markedExample';
import { type MarkedFiles, readMarks, variantsOf, writeMarks } from '../support/markedText';
import { TestClient } from './client';

/** Starts a server on marked files; what it is asked at `‸`. */
async function start(source: Readonly<Record<string, string>>) {
  const marked = readMarks(source);
  const client = await TestClient.start(marked.files);
  const position: Position = new LineIndex(marked.files[marked.at] ?? '').position(marked.offset);
  return { client, marked, at: { textDocument: { uri: client.uri(marked.at) }, position } };
}

function marks(client: TestClient, { files }: MarkedFiles, locations: readonly Location[]): Record<string, string> {
  const places = locations.flatMap(({ uri, range }) => {
    const path = Object.keys(files).find((one) => client.uri(one) === uri);
    if (path === undefined) return [];
    const lines = new LineIndex(files[path] ?? '');
    return [{ path, span: { start: lines.offset(range.start), end: lines.offset(range.end) } }];
  });
  return writeMarks(files, places);
}

const SOURCE = example(steps('- install: ⟦whe‸el⟧\n- say: "🔧 Turn the <⟦wheel⟧>."'), {
  [FAMILY]: [['  wheel: {', '  ⟦wheel⟧: {']],
  [KIT]: [['  - { item', '  - { item: 5, part: ⟦wheel⟧ }\n  - { item']],
});

describe('over the protocol', () => {
  test.each(variantsOf(SOURCE))('definition, references and highlights agree with the text %#', async (source) => {
    const { client, marked, at } = await start(source);
    const references = await client.connection.sendRequest(ReferencesRequest.type, {
      ...at,
      context: { includeDeclaration: true },
    });
    expect(marks(client, marked, references ?? [])).toEqual(writeMarks(marked.files, marked.places));
    const uses = await client.connection.sendRequest(ReferencesRequest.type, {
      ...at,
      context: { includeDeclaration: false },
    });
    expect(uses?.map(({ uri }) => uri)).not.toContain(client.uri(FAMILY));
    const definitions = (await client.connection.sendRequest(DefinitionRequest.type, at)) as Location[];
    expect(marks(client, marked, definitions)[FAMILY]).toContain('⟦wheel⟧: {');
    const highlights = (await client.connection.sendRequest(DocumentHighlightRequest.type, at)) ?? [];
    expect(highlights.map(({ kind }) => kind)).toEqual([DocumentHighlightKind.Read, DocumentHighlightKind.Read]);
  });

  test('a document that is not open and that nothing links to is found, and open text counts before the disk', async () => {
    const { client, at, marked } = await start(SOURCE);
    const context = { includeDeclaration: true };
    client.open(KIT, (marked.files[KIT] ?? '').replace('part: wheel', 'part: cover'));
    const references = await client.connection.sendRequest(ReferencesRequest.type, { ...at, context });
    expect(new Set(references?.map(({ uri }) => uri))).toEqual(new Set([client.uri(FAMILY), client.uri(PROCEDURE)]));
  });

  test('a renaming changes documents that are open and that are not, and names the version that it is for', async () => {
    const { client, at, marked } = await start(SOURCE);
    client.open(PROCEDURE, marked.files[PROCEDURE] ?? '');
    const prepared = await client.connection.sendRequest(PrepareRenameRequest.type, at);
    expect(prepared).toMatchObject({ placeholder: 'wheel' });
    const edit = await client.connection.sendRequest(RenameRequest.type, { ...at, newName: 'new-wheel' });
    const changes = (edit?.documentChanges ?? []) as TextDocumentEdit[];
    const versions = Object.fromEntries(changes.map(({ textDocument }) => [textDocument.uri, textDocument.version]));
    expect(versions).toEqual({ [client.uri(FAMILY)]: null, [client.uri(KIT)]: null, [client.uri(PROCEDURE)]: 1 });
    const edits = changes.flatMap(({ textDocument: { uri }, edits: some }) =>
      some.map((one) => ({ uri, range: 'range' in one ? one.range : { start: at.position, end: at.position } })),
    );
    expect(marks(client, marked, edits)).toEqual(writeMarks(marked.files, marked.places));
  });

  test('a tool that only a family mentions is found through a procedure that does not name it', async () => {
    const { client, marked, at } = await start(
      example(steps('- install: wheel').replace(', dial-gauge', ''), {
        [STORES]: [['  dial-gauge:', '  ⟦dial‸-gauge⟧:']],
        [FAMILY]: [['turns freely', 'runs true by the <⟦dial-gauge⟧>']],
      }),
    );
    const context = { includeDeclaration: true };
    const references = await client.connection.sendRequest(ReferencesRequest.type, { ...at, context });
    expect(marks(client, marked, references ?? [])).toEqual(writeMarks(marked.files, marked.places));
  });

  test('a client that asks for it hears which id led to a definition and all that is declared there', async () => {
    const marked = readMarks(SOURCE);
    const textDocument = { definition: { linkSupport: true }, rename: { prepareSupport: true } };
    const client = await TestClient.start(marked.files, { textDocument });
    const lines = new LineIndex(marked.files[FAMILY] ?? '');
    const position = new LineIndex(marked.files[PROCEDURE] ?? '').position(marked.offset);
    const at = { textDocument: { uri: client.uri(PROCEDURE) }, position };
    const [link] = ((await client.connection.sendRequest(DefinitionRequest.type, at)) ?? []) as LocationLink[];
    expect(link?.targetUri).toBe(client.uri(FAMILY));
    const { start: from, end } = link?.originSelectionRange ?? { start: position, end: position };
    expect([from.line, end.character - from.character]).toEqual([position.line, 'wheel'.length]);
    const target = link?.targetRange ?? { start: position, end: position };
    expect(marked.files[FAMILY]?.slice(lines.offset(target.start), lines.offset(target.end))).toMatch(
      /^wheel: \{.*on-condition \}$/,
    );
    expect(client.initialized?.capabilities.renameProvider).toEqual({ prepareProvider: true, workDoneProgress: true });
  });

  test('a renaming that cannot be says why', async () => {
    const { client, at } = await start(SOURCE);
    const asked = client.connection.sendRequest(RenameRequest.type, { ...at, newName: 'cover' });
    await expect(asked).rejects.toThrow(`The id "cover" is that of a part in ${FAMILY} already`);
    const path = { textDocument: at.textDocument, position: { line: 4, character: 12 } };
    const prepared = client.connection.sendRequest(PrepareRenameRequest.type, path);
    await expect(prepared).rejects.toThrow('A path follows its file; rename the file itself');
  });

  test('nothing is answered where there is no document', async () => {
    const { client } = await start(SOURCE);
    const nowhere = { textDocument: { uri: client.uri('none.kit.yaml') }, position: { line: 0, character: 0 } };
    expect(await client.connection.sendRequest(DefinitionRequest.type, nowhere)).toBeNull();
    expect(await client.connection.sendRequest(DocumentHighlightRequest.type, nowhere)).toBeNull();
  });

  test('what the server can do is announced', async () => {
    const { client } = await start(SOURCE);
    expect(client.initialized?.capabilities).toMatchObject({
      definitionProvider: true,
      referencesProvider: { workDoneProgress: true },
      documentHighlightProvider: true,
      renameProvider: true,
    });
  });
});
