import { describe, expect, test } from 'vitest';
import { pairOf } from '../../server/src/core/syntax/node';
import { quoteValueAt } from '../../server/src/core/syntax/quoteValue';
import { plain, plainRoot, read } from '../support/read';

/** What people who do not program type, and what YAML would make of it. */
describe('a value that YAML would take for something else stays the text that was typed', () => {
  test.each([
    ['part number with leading zeros', 'number: 0040117', '0040117'],
    ['revision', 'revision: 1.10', '1.10'],
    ['number that looks like a power of ten', 'number: 12E5', '12E5'],
    ['octal', 'number: 0o17', '0o17'],
    ['hexadecimal', 'number: 0x1F', '0x1F'],
    ['yes', 'title: yes', 'yes'],
    ['no', 'title: no', 'no'],
    ['off', 'title: off', 'off'],
    ['null', 'title: null', 'null'],
    ['tilde', 'title: ~', '~'],
    ['date', 'title: 2026-10-12', '2026-10-12'],
    ['time in base 60', 'title: 12:30:45', '12:30:45'],
    ['infinity', 'title: .inf', '.inf'],
    ['decimal comma', 'title: 0,04', '0,04'],
    ['thousands', 'title: 150_000', '150_000'],
    ['fraction', 'title: 3/8 in', '3/8 in'],
    ['inch mark inside', 'title: 3/8" drive', '3/8" drive'],
    ['apostrophe inside', "title: don't force it", "don't force it"],
    ['hash without a space before it', 'title: bolt#3', 'bolt#3'],
    ['colon without a space behind it', 'title: ratio 1:10', 'ratio 1:10'],
    ['dash at the start of a word', 'title: -0.05 mm', '-0.05 mm'],
    ['comparison', 'title: ≥ 120 °C', '≥ 120 °C'],
    ['at inside', 'title: hold @ hexagon', 'hold @ hexagon'],
    ['per cent inside', 'title: 70 % first', '70 % first'],
    ['long dash', 'title: clean — then oil', 'clean — then oil'],
    ['Windows line end', 'title: a\r\nrevision: B\r\n', 'a'],
    ['byte-order mark', '\uFEFFtitle: a', 'a'],
    ['tab behind the colon', 'title:\ta', 'a'],
  ])('%s', (_, text, value) => {
    const document = read(text);
    expect(document.problems).toEqual([]);
    const root = document.root;
    expect(root && plain(root.pairs[0]?.value)).toBe(value);
  });
});

describe('a value that loses text or cannot be read is told, and quotes mend it', () => {
  test.each([
    ['thread with a number sign', 'thread: #10-32 UNF', 'text-lost', '#10-32 UNF'],
    ['bolt by number', 'title: Tighten bolt #3', 'text-lost', 'Tighten bolt #3'],
    ['screwdriver size', 'title: Phillips #2', 'text-lost', 'Phillips #2'],
    ['number sign with a space', 'title: Tighten bolt # 3', 'text-lost', 'Tighten bolt # 3'],
    ['exclamation mark first', 'title: ! Hot', 'not-plain', '! Hot'],
    ['ampersand first', 'title: & then oil', 'not-plain', '& then oil'],
    ['asterisk first', 'title: *see figure 3', 'not-plain', '*see figure 3'],
    ['at first', 'title: @ 3 bar', 'broken', '@ 3 bar'],
    ['backtick first', 'title: `oil`', 'broken', '`oil`'],
    ['per cent first', 'title: %70 of the torque', 'broken', '%70 of the torque'],
    ['greater or equal first', 'title: >= 5 mm', 'broken', '>= 5 mm'],
    ['bar first', 'title: | mark', 'broken', '| mark'],
    ['quoted word first', 'title: "GO" gauge enters', 'broken', '"GO" gauge enters'],
    ['single-quoted word first', "title: 'NO GO' does not enter", 'broken', "'NO GO' does not enter"],
    ['colon and space inside', 'title: Stop: the shaft breaks', 'broken', 'Stop: the shaft breaks'],
    ['comma first', 'title: , then oil', 'broken', ', then oil'],
    ['bracket with words behind it', 'title: [optional] clean it', 'broken', '[optional] clean it'],
    ['brace with words behind it', 'title: {blue} mark', 'broken', '{blue} mark'],
    ['dash and space first', 'title: - clean it', 'broken', '- clean it'],
  ])('%s', (_, text, kind, value) => {
    const document = read(`${text}\nrevision: B`);
    expect(document.problems.map((problem) => problem.kind)).toEqual([kind]);
    const [problem] = document.problems;
    if (problem === undefined) throw new Error('no problem');
    const edit = quoteValueAt(problem.range.item, problem.range.from);
    if (edit === undefined) throw new Error('no edit');
    const { start, end } = document.spanOf(edit.range);
    const mended = read(document.text.slice(0, start) + edit.text + document.text.slice(end));
    expect(mended.problems).toEqual([]);
    expect(plainRoot(mended)).toEqual({ [text.split(':')[0] ?? '']: value, revision: 'B' });
  });
});

test('a remark behind a value is a remark', () => {
  expect(read('title: a   # a remark\nrevision: B # another').problems).toEqual([]);
});

test('text lost inside brackets costs one problem, not three', () => {
  expect(read('a: { name: bolt #3, kind: bolt }\nb: c').problems.map((problem) => problem.kind)).toEqual(['text-lost']);
});

test('a tab that indents a line is told in those words', () => {
  const [problem] = read('phases:\n\t- phase: Strip\n').problems;
  expect(problem?.kind === 'broken' && problem.message).toBe('A tab indents this line; indent with spaces');
});

test('merge-conflict markers are told each, and both sides are still read', () => {
  const document = read('title: a\n<<<<<<< ours\nrevision: B\n=======\nrevision: C\n>>>>>>> theirs\nstatus: draft\n');
  expect(document.problems.map((problem) => problem.kind)).toEqual([
    'conflict-marker',
    'conflict-marker',
    'conflict-marker',
  ]);
  const pairs = document.root?.pairs.map(({ key, value }) => [key.text, plain(value)]);
  expect(pairs).toEqual([
    ['title', 'a'],
    ['revision', 'B'],
    ['revision', 'C'],
    ['status', 'draft'],
  ]);
});

test.each([
  ['anchor', 'title: &a text'],
  ['alias', 'title: *a'],
  ['tag', 'title: !!str text'],
  ['merge-key', '<<: { a: b }'],
  ['explicit-key', '? title\n'],
  ['directive', '%YAML 1.2\ntitle: a'],
  ['second-document', 'title: a\n---\ntitle: b'],
])('%s is not plain YAML', (what, text) => {
  const found = read(text).problems.flatMap((problem) => (problem.kind === 'not-plain' ? [problem.what] : []));
  expect(found).toContain(what);
});

test('a first document marker is nothing to complain of', () => {
  expect(read('---\ntitle: a\n').problems).toEqual([]);
});

test('an unclosed quote does not swallow the next step', () => {
  const document = read(
    'phases:\n  - phase: A\n    steps:\n      - step: one\n        title: "open\n      - step: two\n        title: next\n',
  );
  expect(document.problems).toHaveLength(1);
  const steps = pairOf(document.root ?? fail(), 'phases')?.value;
  expect(plain(steps)).toMatchObject([{ phase: 'A', steps: [{ step: 'one' }, { step: 'two', title: 'next' }] }]);
});

function fail(): never {
  throw new Error('no root');
}
