import fc from 'fast-check';
import { expect, test } from 'vitest';
import { parseDocument } from 'yaml';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import { plainRoot, read } from '../support/read';

const STEPS = ['one', 'two', 'three', 'four'].map(
  (id) => `      - step: ${id}
        title: Title of ${id}
        # a remark
        do:
          - tighten: nut
            torque: 5.1 ± 0.3 N·m
          - say: |
              First line of ${id}
                # not a remark
              last line
          - { install: [a, b], note: "x: y" }
`,
);

const TEXT = `witnessmark: 1
title: A procedure
tools: [a, b]
phases:
  - phase: Strip
    when: v4-20
    steps:
${STEPS.slice(0, 2).join('\n')}
  - phase: Assemble
    steps:
${STEPS.slice(2).join('')}    note: behind the steps
at-installation:
- one
- two
`;

/** What the library makes of the whole text at once. */
function whole(text: string): unknown {
  return parseDocument(text, { schema: 'failsafe' }).toJS();
}

test('read item by item, a document is what it is when read at once', () => {
  expect(plainRoot(read(TEXT))).toEqual(whole(TEXT));
});

test('Windows line ends change nothing', () => {
  expect(plainRoot(read(TEXT.replaceAll('\n', '\r\n')))).toEqual(whole(TEXT));
});

test('lists may stand as far left as their key', () => {
  const text =
    'phases:\n- phase: A\n  steps:\n  - step: one\n    do:\n    - say: x\n  - step: two\n    do: []\n- phase: B\n  steps: []\n';
  expect(plainRoot(read(text))).toEqual(whole(text));
});

const insertions = [
  'x',
  ' ',
  '\n',
  '"',
  "'",
  '- ',
  ': ',
  '#',
  ' #',
  '{',
  '}',
  '\n      - step: new\n',
  '\r\n',
  '\t',
  '|',
  '\n\n',
];
const seed = 20261125;

function edited(text: string, at: number, remove: number, insert: string): string {
  const from = at % (text.length + 1);
  return text.slice(0, from) + insert + text.slice(from + remove);
}

test('on text without a fault, the result equals the whole reading after any edit', () => {
  let compared = 0;
  fc.assert(
    fc.property(fc.nat(), fc.nat({ max: 12 }), fc.constantFrom(...insertions), (at, remove, insert) => {
      const text = edited(TEXT, at, remove, insert);
      const parsed = parseDocument(text, { schema: 'failsafe', uniqueKeys: true });
      if (parsed.errors.length > 0 || parsed.warnings.length > 0 || typeof parsed.toJS() !== 'object') return;
      const document = read(text);
      if (document.problems.length > 0) return;
      compared++;
      expect(trimmed(plainRoot(document))).toEqual(trimmed(parsed.toJS()));
    }),
    { seed, numRuns: 800, verbose: true },
  );
  expect(compared).toBeGreaterThan(200);
});

/** Empty values read as null there and as nothing here, and the last line end of a block text may be trimmed. */
function trimmed(value: unknown): unknown {
  if (value === null || value === undefined || value === '') return '';
  if (typeof value === 'string') return value.trimEnd();
  if (Array.isArray(value)) return value.map(trimmed);
  return Object.fromEntries(Object.entries(value as object).map(([key, one]) => [key, trimmed(one)]));
}

test('what was remembered changes nothing', () => {
  const memo = new ReadingMemo();
  fc.assert(
    fc.property(fc.nat(), fc.nat({ max: 40 }), fc.constantFrom(...insertions), (at, remove, insert) => {
      const text = edited(TEXT, at, remove, insert);
      const warm = read(text, 'procedure', memo);
      const cold = read(text);
      const problems = (document: typeof warm): unknown =>
        document.problems.map((problem) => [problem.kind, document.spanOf(problem.range)]);
      expect(plainRoot(warm)).toEqual(plainRoot(cold));
      expect(problems(warm)).toEqual(problems(cold));
    }),
    { seed, numRuns: 800, verbose: true },
  );
});

test('an item keeps its identity while its text stays the same', () => {
  const memo = new ReadingMemo();
  const before = read(TEXT, 'procedure', memo);
  const after = read(TEXT.replace('Title of one', 'Another title'), 'procedure', memo);
  const kept = after.items.filter((item) => before.items.includes(item));
  expect(kept.length).toBe(after.items.length - 1);
});

test('the same step twice is two items, each at its own place', () => {
  const text = `phases:\n  - phase: A\n    steps:\n${STEPS[0]}${STEPS[0]}`;
  const document = read(text);
  const starts = document.items.map((item) => document.spanOf({ item, from: 0, to: 0 }).start);
  expect(new Set(starts).size).toBe(document.items.length);
});
