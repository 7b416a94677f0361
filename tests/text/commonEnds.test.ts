import { expect, test } from 'vitest';
import { commonEnds as endsOf, isSameText } from '../../server/src/core/text/commonEnds';
import { piecesOf, withEdit } from '../../server/src/core/text/pieces';
import { seededRandom } from '../support/seededRandom';

function commonEnds(before: string, after: string) {
  return endsOf(piecesOf(before), piecesOf(after));
}

const SEED = Number(process.env.SEED ?? 20261125);

test('the ends of one text are all of it, at the head', () => {
  expect(commonEnds('', '')).toEqual({ head: 0, tail: 0 });
  expect(commonEnds('abc', 'abc')).toEqual({ head: 3, tail: 0 });
  expect(commonEnds('x'.repeat(5000), 'x'.repeat(5000))).toEqual({ head: 5000, tail: 0 });
});

test('the two ends do not overlap where text is repeated', () => {
  expect(commonEnds('aaaa', 'aaa')).toEqual({ head: 3, tail: 0 });
  expect(commonEnds('abab', 'ababab')).toEqual({ head: 4, tail: 0 });
  expect(commonEnds('abcab', 'ab')).toEqual({ head: 2, tail: 0 });
});

test(`what lies between is all that differs, however long the texts are (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  const below = (limit: number): number => Math.floor(random() * limit);
  const textOf = (length: number): string => Array.from({ length }, () => 'ab\u00b1\ud83d'.charAt(below(4))).join('');
  for (let round = 0; round < 300; round++) {
    const before = textOf(below(3) === 0 ? below(20) : 1500 + below(8000));
    const at = below(before.length + 1);
    const after = before.slice(0, at) + textOf(below(4)) + before.slice(at + below(below(3) === 0 ? 5000 : 4));
    const { head, tail } = commonEnds(before, after);
    expect(endsOf(piecesOf(before, 700), piecesOf(after, 900))).toEqual({ head, tail });
    const shorter = Math.min(before.length, after.length);
    expect(after.slice(0, head)).toBe(before.slice(0, head));
    expect(after.slice(after.length - tail)).toBe(before.slice(before.length - tail));
    expect(head + tail).toBeLessThanOrEqual(shorter);
    if (head + tail < shorter) {
      expect(after[head]).not.toBe(before[head]);
      expect(after[after.length - tail - 1]).not.toBe(before[before.length - tail - 1]);
    }
  }
});

test(`texts that share pieces have the ends that they have as strings (seed ${SEED})`, () => {
  const random = seededRandom(SEED);
  const below = (limit: number): number => Math.floor(random() * limit);
  let pieces = piecesOf('abab'.repeat(20), 8);
  for (let round = 0; round < 2000; round++) {
    const before = pieces;
    for (let edits = below(4); edits > 0; edits--) {
      const from = below(pieces.length + 1);
      const to = Math.min(pieces.length, from + below(4));
      pieces = withEdit(pieces, from, to, 'abba'.repeat(3).slice(below(12), pieces.length > 200 ? 1 : 12));
    }
    const [one, other] = [before.texts.join(''), pieces.texts.join('')];
    expect(endsOf(before, pieces)).toEqual(endsOf(piecesOf(one), piecesOf(other)));
    expect(isSameText(before, pieces)).toBe(one === other);
  }
});
