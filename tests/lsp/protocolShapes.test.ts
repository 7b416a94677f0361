import { beforeAll, describe, expect, test } from 'vitest';
import { type ProtocolShapes, protocolShapes } from '../support/protocolShapes';
import { ProtocolWatch } from '../support/protocolWatch';

let shapes: ProtocolShapes;
beforeAll(async () => {
  shapes = await protocolShapes();
}, 120_000);

const jsonrpc = '2.0';
const start = { line: 0, character: 0 };
const range = { start, end: start };

/** What is wrong with the answer to a request. */
function answered(method: string, result: unknown): string[] {
  const watch = new ProtocolWatch(shapes);
  watch.sent({ jsonrpc, id: 1, method, params: {} } as never);
  watch.received({ jsonrpc, id: 1, result } as never);
  return watch.problems;
}

/** What is wrong with something that the server says of its own accord. */
function said(message: object, before?: object): string[] {
  const watch = new ProtocolWatch(shapes);
  if (before !== undefined) watch.sent({ jsonrpc, ...before } as never);
  watch.received({ jsonrpc, ...message } as never);
  return watch.problems;
}

describe('what a server answers is held against the protocol', () => {
  test('and let be where it is right', () => {
    expect(answered('textDocument/hover', null)).toEqual([]);
    expect(answered('textDocument/hover', { contents: { kind: 'markdown', value: 'x' }, range })).toEqual([]);
    expect(answered('textDocument/completion', [{ label: 'x', data: { anything: [1, { a: null }] } }])).toEqual([]);
    expect(
      answered('textDocument/documentSymbol', [{ name: 'x', kind: 12, range, selectionRange: range, children: [] }]),
    ).toEqual([]);
  });

  test('and reported where a property is unknown, missing or of another kind', () => {
    const hover = { contents: { kind: 'markdown', value: 'x' } };
    expect(answered('textDocument/hover', { ...hover, colour: 'red' })).toEqual([
      'textDocument/hover.colour is not known',
    ]);
    expect(answered('textDocument/hover', {})).toEqual(['textDocument/hover has no contents']);
    expect(answered('textDocument/hover', { contents: { kind: 'rtf', value: 'x' } })).not.toEqual([]);
    expect(answered('textDocument/definition', [{ uri: 7, range }])).toEqual([
      'textDocument/definition[0].uri is 7 instead of string',
    ]);
    expect(answered('textDocument/foldingRange', [{ startLine: 1.5, endLine: 2 }])).not.toEqual([]);
    expect(answered('textDocument/foldingRange', [{ startLine: -1, endLine: 2 }])).not.toEqual([]);
    expect(answered('textDocument/diagnostic', { kind: 'unchanged', items: [] })).not.toEqual([]);
    expect(answered('initialize', { capabilities: { hoverProvider: true, hoveringProvider: true } })).not.toEqual([]);
  });

  test('and an absent value is not the same as null', () => {
    const diagnostic = { range, message: 'x' };
    const full = (items: unknown[]) => ({ kind: 'full', items });
    expect(answered('textDocument/diagnostic', full([diagnostic]))).toEqual([]);
    expect(answered('textDocument/diagnostic', full([{ ...diagnostic, code: null }]))).not.toEqual([]);
  });

  test('also where it is a message of our own', () => {
    expect(answered('witnessmark/builds', { builds: [{ id: 'a', label: 'b' }], count: 1 })).toEqual([]);
    expect(answered('witnessmark/builds', { builds: [{ id: 'a' }], count: 1 })).not.toEqual([]);
    expect(answered('witnessmark/nothing', null)).not.toEqual([]);
  });
});

describe('what a server says of its own accord is held against the protocol', () => {
  const method = 'textDocument/publishDiagnostics';

  test('whether it tells or asks', () => {
    expect(said({ method, params: { uri: 'a', diagnostics: [] } })).toEqual([]);
    expect(said({ method, params: { uri: 'a' } })).toEqual([`${method} has no diagnostics`]);
    expect(said({ method, id: 1, params: { uri: 'a', diagnostics: [] } })).toEqual([`${method} is sent as a request`]);
    expect(said({ method: 'textDocument/shout', params: {} })).toEqual(['textDocument/shout is no method']);
    expect(said({ id: 4, result: null })).toEqual(['nobody has asked for the answer 4']);
  });

  test('and what it registers', () => {
    const register = (registerOptions: unknown) => {
      const registrations = [{ id: 'x', method: 'workspace/didChangeWatchedFiles', registerOptions }];
      return said({ method: 'client/registerCapability', id: 1, params: { registrations } });
    };
    expect(register({ watchers: [{ globPattern: '**' }] })).toEqual([]);
    expect(register({ watchers: ['**'] })).not.toEqual([]);
  });

  test('and how far it has come, or what it has so far', () => {
    const progress = (value: unknown) => ({ method: '$/progress', params: { token: 'p', value } });
    expect(said(progress({ kind: 'begin', title: 'x', percentage: 0 }))).toEqual([]);
    expect(said(progress({ kind: 'begun' }))).not.toEqual([]);
    const before = {
      id: 1,
      method: 'workspace/diagnostic',
      params: { partialResultToken: 'p', previousResultIds: [] },
    };
    expect(said(progress({ items: [] }), before)).toEqual([]);
    expect(said(progress({ kind: 'begin', title: 'x' }), before)).not.toEqual([]);
  });
});
