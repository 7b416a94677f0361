import { describe, expect, test } from 'vitest';
import { conditionAtoms, conditionAtomText, parseConditionText } from '../../server/src/core/builds';
import { all, any, arrives, is, none, outcome } from './ostrel';

describe('the text of a condition', () => {
  test.each([
    ['v4-20', is('v4-20')],
    ['arrives=wheel-44', arrives('wheel-44')],
    ['nut-hand=left', outcome('nut-hand', 'left')],
    ['compressor-wheel=re-used', outcome('compressor-wheel', 're-used')],
    ['  v4-20 ', is('v4-20')],
  ])('%s is read', (text, expected) => {
    expect(parseConditionText(text)).toEqual(expected);
  });

  test.each([
    '',
    'v4',
    'V4-20',
    '4v-20',
    'otherwise',
    'none',
    'arrives=',
    'arrives=none',
    'nut-hand=',
    '=left',
    'any=left',
    'a b',
    'nut-hand=left=right',
  ])('"%s" has no such shape', (text) => {
    expect(parseConditionText(text)).toBeUndefined();
  });

  test('is written as it was read', () => {
    for (const text of ['v4-20', 'arrives=wheel-44', 'nut-hand=left']) {
      const atom = parseConditionText(text);
      expect(atom && conditionAtomText(atom)).toBe(text);
    }
  });

  test('names are found at any depth, in order', () => {
    const expr = all(any(is('aaa'), none(arrives('bbb'))), outcome('ccc', 'x'), { kind: 'always' });
    expect([...conditionAtoms(expr)].map(conditionAtomText)).toEqual(['aaa', 'arrives=bbb', 'ccc=x']);
  });
});
