import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sourceRange } from '../../server/src/core/syntax/scalarSource';
import { nodesOf, read } from '../support/read';

/** The source that stands behind a stretch of a scalar's text. */
function sourceOf(text: string, word: string): string {
  const document = read(text);
  for (const node of nodesOf(document.root)) {
    if (node.kind !== 'scalar' || !node.text.includes(word)) continue;
    const from = node.text.indexOf(word);
    const { start, end } = document.spanOf(sourceRange(node, from, from + word.length));
    return text.slice(start, end);
  }
  throw new Error(`no scalar with ${word}`);
}

test.each([
  ['plain', 'title: turn the wheel'],
  ['double quotes', 'title: "turn the wheel"'],
  ['double quotes with escapes before it', 'title: "a \\"b\\" \\u00e9 wheel"'],
  ['single quotes', "title: 'don''t turn the wheel'"],
  ['flow collection', 'title: { a: x, b: [y, wheel] }'],
  ['literal block', 'title: |\n  first line\n  then the wheel\n'],
  ['folded block', 'title: >-\n  first\n  line\n\n  then the wheel\n'],
  ['plain text over lines', 'title: first line\n  then the wheel\n'],
  ['double quotes over lines', 'title: "first\n  line \\\n  then the wheel"\n'],
  ['Windows line ends', 'title: |\r\n  first line\r\n  then the wheel\r\n'],
  ['byte-order mark', '\uFEFFtitle: the wheel'],
  [
    'deeper in a step',
    'phases:\n  - phase: A\n    steps:\n      - step: one\n        do:\n          - say: "turn the wheel"\n',
  ],
])('a word is found in its source: %s', (_, text) => {
  expect(sourceOf(text, 'wheel')).toBe('wheel');
});

test('every range lies inside the text, whatever the text', () => {
  const seed = 20261125;
  const piece = fc.constantFrom(
    'a: ',
    '- ',
    'b',
    '\n',
    '\n  ',
    '"',
    "'",
    '{',
    '}',
    '[',
    ']',
    ',',
    '#',
    ' #x',
    '|\n',
    '>',
    '&x',
    '*x',
    '!t ',
    '? ',
    '\t',
    '\r\n',
    ':',
    '---\n',
    'steps:\n',
    'phases:\n',
    '  ',
    'é😀',
    '%',
    '<<: ',
  );
  fc.assert(
    fc.property(fc.array(piece, { maxLength: 40 }), (pieces) => {
      const text = pieces.join('');
      const document = read(text);
      for (const node of [...nodesOf(document.root), ...document.problems.map((problem) => problem.range)]) {
        const { start, end } = document.spanOf(node);
        expect(start).toBeGreaterThanOrEqual(0);
        expect(end).toBeGreaterThanOrEqual(start);
        expect(end).toBeLessThanOrEqual(text.length);
      }
    }),
    { seed, numRuns: 3000, verbose: true },
  );
});
