import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alignmentOf } from '../../server/src/core/walk/alignment';

const shown = (now: string, before: string): string[] =>
  alignmentOf([...now], [...before]).map((one) =>
    one.is === 'same'
      ? `same ${now.slice(one.now, one.now + one.count)}`
      : `${before.slice(...one.before)} > ${now.slice(...one.now)}`,
  );

test('what is in both in one order meets, and the rest stands beside what stood there', () => {
  expect(shown('abcdef', 'abcdef')).toEqual(['same abcdef']);
  expect(shown('abXdef', 'abcdef')).toEqual(['same ab', 'c > X', 'same def']);
  expect(shown('bcdeaf', 'abcdef')).toEqual(['a > ', 'same bcde', ' > a', 'same f']);
  expect(shown('aXcdYf', 'abcdef')).toEqual(['same a', 'b > X', 'same cd', 'e > Y', 'same f']);
  expect(shown('', 'ab')).toEqual(['ab > ']);
  expect(shown('', '')).toEqual([]);
});

test('every member of both lists has its place in one segment, in order', () => {
  const lists = fc.tuple(fc.uniqueArray(fc.nat(12)), fc.uniqueArray(fc.nat(12)));
  fc.assert(
    fc.property(lists, ([now, before]) => {
      let [n, b] = [0, 0];
      for (const one of alignmentOf(now, before)) {
        const [from, to] = one.is === 'same' ? [one.now, one.now + one.count] : one.now;
        const [fromBefore, toBefore] = one.is === 'same' ? [one.before, one.before + one.count] : one.before;
        expect([from, fromBefore]).toEqual([n, b]);
        if (one.is === 'same') expect(now.slice(from, to)).toEqual(before.slice(fromBefore, toBefore));
        [n, b] = [to, toBefore];
      }
      expect([n, b]).toEqual([now.length, before.length]);
    }),
  );
});
