import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { type DocumentKind, documentKindOf } from '../../server/src/core/syntax/documentKind';
import { linesAfter } from '../../server/src/core/syntax/keptLines';
import { type Lines, linesOf } from '../../server/src/core/syntax/lines';
import type { Item, ItemRange, Node } from '../../server/src/core/syntax/node';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import { commonEnds } from '../../server/src/core/text/commonEnds';
import { DocumentText } from '../../server/src/core/text/documentText';
import { piecesOf } from '../../server/src/core/text/pieces';
import { read } from '../support/read';
import { seededRandom } from '../support/seededRandom';

/*
 * A reading that follows another looks only at what an edit has touched. Here it is held against a reading of the same
 * text with nothing remembered, after edits of all kinds.
 */

const SEED = Number(process.env.SEED ?? 20261125);
const ROUNDS = Number(process.env.ROUNDS ?? 1500);

const STEPS = ['one', 'two', 'two', 'three', 'four'].map(
  (id) => `      - step: ${id}
        title: Title of ${id}
        # a remark
        do:
          - tighten: nut
            torque: 5.1 ± 0.3 N·m
          - say: |
              First line of ${id} 🔧
                # not a remark
              last line

          - { install: [a, b], note: "x: y" }
`,
);

const OWN: readonly (readonly [DocumentKind, string])[] = [
  [
    'procedure',
    `witnessmark: 1
title: A procedure
tools: [a, b]
phases:
  - phase: Strip
    when: v4-20
    steps:
${STEPS.slice(0, 3).join('\n')}
  # between phases
  - phase: Assemble
    steps:
${STEPS.slice(3).join('')}    note: behind the steps
  - phase: Short
    steps: []
concessions:
- step: one
  about: nut
- step: two
figures:
  f-1: { file: a.svg, text: A }
  f-2:
    file: b.svg
at-installation:
- one
`,
  ],
  [
    'procedure',
    '---\nphases:\n- phase: A\n  steps:\n  - step: one\n    do:\n    - say: x\n  - step: two\n    do: []\n',
  ],
  ['kit', 'witnessmark: 1\nkit: k\nlines:\n  - item: one\n    number: 0040117\n\n  - item: two\n  - item: two\n'],
  ['stores', 'tools:\n  a: { name: A }\n  b:\n    name: B\nconsumables:\n\n  # remark\n  c:\n    name: C\n'],
];

const SAMPLES = readdirSync('sample-procedures', { recursive: true, encoding: 'utf8' }).flatMap((path) => {
  const kind = documentKindOf(path);
  const text = kind === undefined ? '' : readFileSync(`sample-procedures/${path}`, 'utf8');
  // A large one takes its time and shows nothing that a small one does not.
  return kind === undefined || text.length > 8000 ? [] : [[kind, text] as const];
});

const PIECES = [
  ...[
    'x',
    ' ',
    '  ',
    '\n',
    '\n\n',
    '\r\n',
    '\r',
    '\t',
    '"',
    "'",
    '- ',
    '-',
    ': ',
    ':',
    '#',
    ' # x',
    '\n# x',
    '{',
    '}',
    '[',
  ],
  ...[
    ']',
    ', ',
    '|\n',
    '>-\n',
    '|',
    '&a ',
    '*a',
    '!t ',
    '? ',
    '---\n',
    '\n---\n',
    '\n--- x\n',
    '...\n',
    '\n...\n',
    '%',
  ],
  ...[
    '\n%YAML 1.2\n',
    '\n<<<<<<< ours\n',
    '\n=======\n',
    '\n>>>>>>> theirs\n',
    '\ufeff',
    '\u2028',
    '\u00a0',
    '→',
    '🔧',
  ],
  ...[
    '\ud83d',
    '\udd27',
    '\n      - step: new\n',
    '\n  - phase: New\n    steps:\n',
    '\nphases:\n',
    '    steps:\n',
    '\\',
    '<<: x',
  ],
];

/** One text after another, each an edit of the one before it. */
class Writer {
  text: string;
  readonly #random: () => number;
  readonly #earlier: string[] = [];
  #cut = '';

  constructor(text: string, random: () => number) {
    this.text = text;
    this.#random = random;
  }

  edit(): void {
    const before = this.text;
    this.text = this.#edited(before);
    this.#earlier.push(before);
    if (this.#earlier.length > 8) this.#earlier.shift();
  }

  #edited(text: string): string {
    const at = this.#below(text.length + 1);
    const kind = this.#below(100);
    if (kind < 45) return put(text, at, at + this.#below(2) * this.#below(6), this.#pick(PIECES));
    if (kind < 55) return put(text, at, at + this.#below(8), '');
    if (kind < 63) return this.#cutOut(text, ...this.#wholeLines(text));
    if (kind < 73) return put(text, ...this.#emptyAt(this.#wholeLines(text)), this.#cut);
    if (kind < 79) return this.#moveLines(text);
    if (kind < 82) return put(text, ...this.#wholeLines(text), this.#pick(PIECES));
    if (kind < 85) return this.#withOtherLineEnds(text);
    if (kind < 87) return text.startsWith('\ufeff') ? text.slice(1) : `\ufeff${text}`;
    if (kind < 89) return this.#indentMore(text);
    if (kind < 91) return text.replaceAll('step', 'stage').replaceAll('stage', this.#pick(['step', 'stp']));
    return this.#pick(this.#earlier) ?? text;
  }

  #below(limit: number): number {
    return Math.floor(this.#random() * limit);
  }

  #pick<T>(list: readonly T[]): T {
    return list[this.#below(list.length)] as T;
  }

  #wholeLines(text: string): [from: number, to: number] {
    const from = text.lastIndexOf('\n', this.#below(text.length + 1)) + 1;
    let to = from;
    for (let lines = 1 + this.#below(15); lines > 0 && to >= 0; lines--) to = text.indexOf('\n', to) + 1 || text.length;
    return [from, to];
  }

  #emptyAt([from]: readonly [number, number]): [number, number] {
    return [from, from];
  }

  #cutOut(text: string, from: number, to: number): string {
    this.#cut = text.slice(from, to);
    return put(text, from, to, '');
  }

  #moveLines(text: string): string {
    const rest = this.#cutOut(text, ...this.#wholeLines(text));
    return put(rest, ...this.#emptyAt(this.#wholeLines(rest)), this.#cut);
  }

  #withOtherLineEnds(text: string): string {
    const [from, to] = this.#below(2) === 0 ? [0, text.length] : this.#wholeLines(text);
    const lines = text.slice(from, to);
    return put(text, from, to, lines.includes('\r') ? lines.replaceAll('\r\n', '\n') : lines.replaceAll('\n', '\r\n'));
  }

  #indentMore(text: string): string {
    const [from, to] = this.#wholeLines(text);
    return put(text, from, to, text.slice(from, to).replaceAll(/^/gm, this.#pick([' ', '  ', '\t'])));
  }
}

function put(text: string, from: number, to: number, added: string): string {
  return text.slice(0, from) + added + text.slice(Math.max(from, to));
}

/** The text as an editor gives it: by an edit of what may be more than differs, by two of them, or now and then anew. */
function edited(before: DocumentText, text: string, random: () => number): DocumentText {
  const way = random();
  if (way < 0.05) return DocumentText.of(text, 64);
  if (way < 0.1) return DocumentText.of(text);
  const { head, tail } = commonEnds(before.pieces, piecesOf(text));
  const from = Math.max(0, head - Math.floor(random() * 5));
  const behind = Math.max(0, tail - Math.floor(random() * 5));
  const added = text.slice(from, text.length - behind);
  if (way < 0.7) return before.edited(from, before.length - behind, added);
  const half = Math.floor(random() * (added.length + 1));
  return before.edited(from, before.length - behind, added.slice(half)).edited(from, from, added.slice(0, half));
}

/** All that can be asked of a document, without the identity of its nodes. */
function told(document: SyntaxDocument): unknown {
  const { text, root, other, problems, items } = document;
  const places = new Map(items.map((item, place) => [item, place]));
  const span = (range: ItemRange): unknown => [places.get(range.item), range.from, range.to];
  return {
    root: shape(root, span),
    other: shape(other, span),
    problems: problems.map((problem) => ({
      ...problem,
      range: [document.spanOf(problem.range), problem.range.item.text],
    })),
    items: items.map((item) => [
      item.text,
      document.spanOf({ item, from: 0, to: 1 }),
      document.holds(item),
      item.problems.length,
    ]),
    at: [0, 0.1, 0.31, 0.57, 0.83, 1].map((part) => {
      const found = document.itemAt(Math.floor(text.length * part));
      return found === undefined ? undefined : [found.item.text, found.offset, items.indexOf(found.item)];
    }),
  };
}

function shape(node: Node | undefined, span: (range: ItemRange) => unknown): unknown {
  if (node === undefined) return undefined;
  if (node.kind === 'scalar') return [span(node), node.style, node.text];
  if (node.kind === 'list') return [span(node), node.flow, node.items.map((one) => shape(one, span))];
  return [span(node), node.flow, node.pairs.map(({ key, value }) => [shape(key, span), shape(value, span)])];
}

function compare(
  kind: DocumentKind,
  text: string,
  memo: ReadingMemo,
  given: string | DocumentText = text,
): SyntaxDocument {
  const warm = read(given, kind, memo);
  const [toldWarm, toldCold] = [told(warm), told(read(text, kind))];
  if (JSON.stringify(toldWarm) !== JSON.stringify(toldCold))
    expect({ text, ...Object(toldWarm) }).toEqual({ text, ...Object(toldCold) });
  if (new Set(warm.items).size !== warm.items.length) expect.fail(`An item stands twice in ${JSON.stringify(text)}`);
  return warm;
}

test(`after edits of all kinds, a reading is what it is with nothing remembered (seed ${SEED}, ${ROUNDS} edits)`, () => {
  const random = seededRandom(SEED);
  let kept = 0;
  for (let round = 0; round < ROUNDS; ) {
    const sources = random() < 0.7 ? OWN : SAMPLES;
    const [kind, text] = sources[Math.floor(random() * sources.length)] as (typeof OWN)[number];
    const writer = new Writer(random() < 0.3 ? text.replaceAll('\n', '\r\n') : text, random);
    const memo = new ReadingMemo();
    let content = DocumentText.of(writer.text, 64);
    let before: ReadonlySet<Item> = new Set();
    for (let edits = 0; edits < 40 && round < ROUNDS; edits++, round++) {
      const { items } = compare(kind, writer.text, memo, content);
      if (items.some((item) => before.has(item))) kept++;
      before = new Set(items);
      writer.edit();
      content = edited(content, writer.text, random);
    }
  }
  expect(kept / ROUNDS).toBeGreaterThan(0.7);
});

function rows({ starts, indents, marks, unsafe, textLength }: Lines): string {
  return [starts, indents, marks, unsafe, textLength].join(';');
}

test(`the lines after an edit are those of the text (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  for (const [, text] of OWN) {
    const writer = new Writer(text, random);
    let content = DocumentText.of(text, 64);
    let before = { text: content, lines: linesOf(content) };
    for (let edits = 0; edits < 300; edits++) {
      writer.edit();
      content = edited(content, writer.text, random);
      const { lines, head, tail } = linesAfter(before, content);
      const wanted = linesOf(DocumentText.of(writer.text));
      if (rows(lines) !== rows(wanted)) expect(lines).toEqual(wanted);
      expect(head + tail).toBeLessThan(Math.min(lines.starts.length, before.lines.starts.length) + 1);
      before = { text: content, lines };
    }
  }
});

const [[, PROCEDURE]] = OWN as readonly [(typeof OWN)[number]];

/** How many items of a reading are others than before. */
function changed(before: string, after: string): number {
  const memo = new ReadingMemo();
  const first = new Set(read(before, 'procedure', memo).items);
  return read(after, 'procedure', memo).items.filter((item) => !first.has(item)).length;
}

test('an edit costs the items that it touches, and no others', () => {
  expect(changed(PROCEDURE, PROCEDURE)).toBe(0);
  expect(changed(PROCEDURE, PROCEDURE.replace('of three', 'of "three'))).toBe(1);
  expect(changed(PROCEDURE, PROCEDURE.replace('[a, b], note', '[a, b, note'))).toBe(1);
  expect(changed(PROCEDURE, `# a remark\n\n${PROCEDURE}`)).toBe(0);
  expect(
    changed(PROCEDURE, PROCEDURE.replace('      - step: three\n', '      - step: three\n      - step: new\n')),
  ).toBe(2);
});

test('an item that is moved within one edit stays the same', () => {
  const [one = '', two = ''] = [STEPS[3], STEPS[4]];
  expect(changed(PROCEDURE, PROCEDURE.replace(one + two, two + one))).toBe(0);
});

test('a step that stands twice is taken over twice', () => {
  expect(changed(PROCEDURE, PROCEDURE.replace('title: A procedure', 'title: Another'))).toBe(1);
  expect(changed(PROCEDURE, PROCEDURE.replace(STEPS[1] ?? '', ''))).toBe(0);
});

test('what stands at the end is found when it moves up, also where it is cut otherwise', () => {
  const stores = 'tools:\n  a: A\n  b: [ B\nconble\n=======\ns:\n\n  # remark\n  c:\n    name: C\n';
  const memo = new ReadingMemo();
  compare('stores', stores, memo);
  compare('stores', 'tools:\n  a: A\n  b:\n    name: B\nconsumables:\n\n    name: C\n', memo);
});

test('lines with either line end are told apart', () => {
  const windows = PROCEDURE.replaceAll('\n', '\r\n');
  const torn = windows.replace('of three\r\n', 'of three\n');
  expect(changed(windows, torn)).toBe(1);
  compare('procedure', torn, new ReadingMemo());
});
