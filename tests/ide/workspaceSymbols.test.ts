import { describe, expect, test } from 'vitest';
import { findSymbols, symbolLabel, symbolsOf } from '../../server/src/core/ide/workspaceSymbols';
import { loadAll } from '../support/markedText';
import { example, steps } from './markedExample';

const snapshot = await loadAll(example(steps('- install: wheel')));
const symbols = [...snapshot.uris].flatMap((uri) => {
  const document = snapshot.document(uri);
  return document === undefined ? [] : symbolsOf(document);
});

function found(query: string, most = 3): string[] {
  return findSymbols(symbols, query, most).map((one) => `${one.kind} ${symbolLabel(one)} in ${one.container}`);
}

describe('looking for something in all documents', () => {
  test.each([
    ['cap-nut', 'part cap-nut in pellow-k1 Pellow K1'],
    ['cap nut', 'part cap-nut in pellow-k1 Pellow K1'],
    ['CapNut', 'part cap-nut in pellow-k1 Pellow K1'],
    ['8 mm', 'tool socket-8 – 8 mm socket in Bay 1'],
    ['fit the', 'step fit-wheel – Fit the wheel in OP-9 Rebuild of the Pellow K1, Assemble'],
    ['PK-104', 'kit-line PK-104 – cover-seal in K-PK1'],
    ['op9', 'document OP-9 – Rebuild of the Pellow K1 in op.procedure.yaml'],
    ['hand of', 'outcome nut-hand – hand of the nut in pellow-k1 Pellow K1'],
    ['trqw', 'tool torque-wrench-10 – torque wrench 2–10 N·m in Bay 1'],
  ])('%s', (query, first) => {
    expect(found(query)[0]).toBe(first);
  });

  test('puts what begins with the word before what has it within, and a whole id first', () => {
    expect(found('cover', 5).map((line) => line.split(' ')[1])).toEqual([
      'cover',
      'cover-seal',
      'cover-screw',
      'PK-104',
    ]);
  });

  test('finds nothing where a word is nowhere, all with no word, and never more than is asked for', () => {
    expect(found('cover xyzzy')).toEqual([]);
    expect(findSymbols(symbols, '', 1000)).toHaveLength(symbols.length);
    expect(found('', 2)).toHaveLength(2);
  });
});
