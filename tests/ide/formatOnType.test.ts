import { describe, expect, test } from 'vitest';
import { formatOnType } from '../../server/src/core/ide/format/onType';
import type { DocumentKind } from '../../server/src/core/syntax/documentKind';
import { applyEdits } from '../../server/src/core/text/span';
import { CURSOR, readMarks } from '../support/markedText';
import { read } from '../support/read';

const HEAD = `witnessmark: 1
phases:
  - phase: One
    steps:
      - step: one
`;

/** The text after the character before the cursor was typed; the same is asked of CR LF. */
function typed(text: string, kind: DocumentKind = 'procedure'): string {
  const results = ['\n', '\r\n'].map((lineEnd) => {
    const { files, offset } = readMarks({ text: text.replaceAll('\n', lineEnd) });
    const source = files.text ?? '';
    const typed =
      source.charAt(offset - 1) === '-' || source.charAt(offset - 1) === ':' ? source.charAt(offset - 1) : '\n';
    return applyEdits(source, formatOnType(read(source, kind), offset, typed)).replaceAll('\r\n', '\n');
  });
  expect(results[1]).toBe(results[0]);
  return results[0] ?? '';
}

function inStep(text: string): string {
  return typed(HEAD + text).slice(HEAD.length);
}

test('marks are read as the tests mean them', () => {
  expect(CURSOR).toBe('‸');
});

describe('after a line end', () => {
  test.each([
    [
      'a list of plain entries goes on',
      '        do:\n          - Clean it.\n‸',
      '        do:\n          - Clean it.\n          - ',
    ],
    [
      'so does one of maps in brackets',
      '        do:\n          - { remove: nut }\n‸',
      '        do:\n          - { remove: nut }\n          - ',
    ],
    [
      'an instruction goes on with its keys',
      '        do:\n          - install: wheel\n‸',
      '        do:\n          - install: wheel\n            ',
    ],
    ['a list begins below its key', '        do:\n‸', '        do:\n          - '],
    [
      'what the editor has set in already counts',
      '        do: # what\n          ‸',
      '        do: # what\n          - ',
    ],
    [
      'a map begins below its key',
      '        do:\n          - tighten: nut\n            hold:\n‸',
      '        do:\n          - tighten: nut\n            hold:\n              ',
    ],
    [
      'entries that are there already show how deep',
      '        do:\n‸\n            - remove: nut\n',
      '        do:\n            - \n            - remove: nut\n',
    ],
    [
      'a text in its own lines goes on',
      '        title: |\n          One\n‸',
      '        title: |\n          One\n          ',
    ],
    ['and begins below its key', '        title: |\n‸', '        title: |\n          '],
  ])('%s', (_, before, after) => {
    expect(inStep(before)).toBe(after);
  });

  test.each([
    ['behind a dash alone, where the list was to end', '        do:\n          -\n‸'],
    ['behind a key whose value may stand anywhere', '        title:\n‸'],
    ['in brackets', '        do: [a,\n  ‸\n  b]\n'],
    ['in a text in quotes', '        title: "one\n‸\n two"\n'],
    ['behind a blank line', '        do:\n\n‸'],
    ['behind a comment', '        # so\n‸'],
    ['before text that was on the line', '        do:\n‸- remove: nut\n'],
  ])('nothing %s', (_, text) => {
    expect(inStep(text)).toBe(text.replace('‸', ''));
  });

  test('the map of a family goes on', () => {
    expect(typed('family: f\nparts:\n‸', 'family')).toBe('family: f\nparts:\n  ');
    expect(typed('family: f\nparts:\n  nut: { name: nut }\n‸', 'family')).toBe(
      'family: f\nparts:\n  nut: { name: nut }\n  ',
    );
  });
});

describe('after a dash', () => {
  test('the next instruction goes to the dashes', () => {
    expect(inStep('        do:\n          - install: wheel\n            -‸')).toBe(
      '        do:\n          - install: wheel\n          -',
    );
  });

  test('a list goes below its key', () => {
    expect(inStep('        do:\n        -‸')).toBe('        do:\n          -');
  });

  test.each([
    '        do:\n          - remove: nut\n          -‸',
    '        title: a -‸',
    '        do:\n     -‸',
    '-‸',
  ])('nothing where the dash may stand: %j', (text) => {
    expect(inStep(text)).toBe(text.replace('‸', ''));
  });
});

describe('after a colon', () => {
  test('a key goes to the only map that may have it', () => {
    expect(inStep('        do:\n          - tighten: nut\n          torque:‸')).toBe(
      '        do:\n          - tighten: nut\n            torque:',
    );
  });

  test.each([
    '        do:\n          - tighten: nut\n            torque:‸',
    '        do:\n          - tighten: nut\n          colour:‸',
    '        do:\n          - tighten: nut\n          warning:‸',
    '        do:\n          torque:‸',
  ])('nothing where it may stand, or in several: %j', (text) => {
    expect(inStep(text)).toBe(text.replace('‸', ''));
  });
});

test('nothing is thrown wherever one types, in texts that are broken', () => {
  const text = `${HEAD}        do: [ { a: "\n      - : -\n  - - x:\n\t-\n: :\n`;
  for (let at = 0; at <= text.length; at++)
    for (const what of ['\n', '-', ':'])
      expect(() => formatOnType(read(text.slice(0, at) + what + text.slice(at)), at + 1, what)).not.toThrow();
});
