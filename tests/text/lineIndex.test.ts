import { expect, test } from 'vitest';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { lineStarts } from '../../server/src/core/text/lineStarts';
import { seededRandom } from '../support/seededRandom';

const SEED = Number(process.env.SEED ?? 20261125);

test('lines end at LF, CR LF or a lone CR', () => {
  expect([...lineStarts('a\nb\r\nc\rd\n')]).toEqual([0, 2, 5, 7, 9]);
  expect([...lineStarts('')]).toEqual([0]);
  expect([...lineStarts('\r\n\r')]).toEqual([0, 2, 3]);
});

test(`one text after another, the lines are those of the text alone (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  const below = (limit: number): number => Math.floor(random() * limit);
  let text = 'one\r\ntwo\n'.repeat(600);
  for (let round = 0; round < 1500; round++) {
    const at = below(text.length + 1);
    const added = ['x', '\n', '\r', '\r\n', '\n\r', '', '🔧\n'][below(7)] ?? '';
    text = text.slice(0, at) + added + text.slice(at + below(4));
    if (below(100) === 0) text = text.slice(below(text.length / 10)) + text.slice(0, below(300));
    const wanted = [0, ...Array.from(text.matchAll(/\r\n|\n|\r/g), (found) => found.index + found[0].length)];
    if ([...lineStarts(text)].join() !== wanted.join())
      expect({ text, starts: [...lineStarts(text)] }).toEqual({ text, starts: wanted });
  }
});

test('an index stays true of its text when another text is asked for', () => {
  const one = new LineIndex('a\nb\nc');
  const two = new LineIndex('a\nxx\nb\nc');
  expect(one.position(4)).toEqual({ line: 2, character: 0 });
  expect(two.position(7)).toEqual({ line: 3, character: 0 });
  expect(one.lineText(1)).toBe('b');
});
