import { describe, expect, test } from 'vitest';
import { type BuildFacts, BuildSpace, type ConditionExpr, describeBuilds } from '../../server/src/core/builds';
import { all, any, arrives, is, none, OSTREL_OVERHAUL, oneVariant, option, outcome } from './ostrel';

const space = new BuildSpace(OSTREL_OVERHAUL);

function words(expr: ConditionExpr, of = space): string {
  return describeBuilds(of.set(expr), of);
}

function variants(...ids: string[]): BuildFacts['variants'] {
  return ids.map((id) => ({ id, name: id.toUpperCase() }));
}

describe('a set of builds in words', () => {
  test.each<[string, ConditionExpr]>([
    ['', { kind: 'always' }],
    ['', any(is('v4-20'), is('v4-28r'))],
    ['no build', all(is('v4-20'), is('wheel-44'))],
    ['V4-28R', is('v4-28r')],
    ['with the compressor cover bored for the 44 mm wheel', is('cover-44')],
    ['without the compressor cover bored for the 44 mm wheel', none(is('cover-44'))],
    ['without the 44 mm machined compressor wheel', none(is('wheel-44'))],
    ['received with the compressor cover bored for the 44 mm wheel', arrives('cover-44')],
    ['when the compressor wheel is renewed', outcome('compressor-wheel', 'renewed')],
    ['when the compressor wheel is re-used', none(outcome('compressor-wheel', 'renewed'))],
  ])('"%s"', (expected, expr) => {
    expect(words(expr)).toBe(expected);
  });

  test('names the variant even where it follows from the rest, since a fitter looks there first', () => {
    expect(words(all(is('wheel-44'), outcome('nut-hand', 'left')))).toBe(
      'V4-28R with the 44 mm machined compressor wheel, when the hand of the compressor nut is left',
    );
  });

  test('says each thing once, in a fixed order', () => {
    expect(
      words(
        all(
          outcome('compressor-wheel', 'renewed'),
          outcome('nut-hand', 'right'),
          none(is('wheel-44')),
          arrives('cover-44'),
        ),
      ),
    ).toBe(
      'V4-28R, without the 44 mm machined compressor wheel, received with the compressor cover bored for the 44 mm wheel, when the hand of the compressor nut is right and the compressor wheel is renewed',
    );
  });

  test('sets alternatives side by side', () => {
    expect(words(any(is('v4-20'), outcome('nut-hand', 'left')))).toBe(
      'V4-20; or V4-28R, when the hand of the compressor nut is left',
    );
  });

  test('leaves out an alternative that the others hold', () => {
    expect(words(none(all(is('wheel-44'), outcome('nut-hand', 'left'))))).toBe(
      'without the 44 mm machined compressor wheel; or V4-28R, when the hand of the compressor nut is right',
    );
  });

  test('lists variants, or those left out where they are fewer', () => {
    const many = new BuildSpace(oneVariant([], { variants: variants('aaa', 'bbb', 'ccc', 'ddd', 'eee') }));
    expect(words(any(is('aaa'), is('ddd')), many)).toBe('AAA or DDD');
    expect(words(any(is('ccc'), is('aaa'), is('ddd')), many)).toBe('AAA, CCC or DDD');
    expect(words(none(is('ccc')), many)).toBe('every variant but CCC');
  });

  test('writes out three alternatives and counts the rest', () => {
    const names = ['aaa', 'bbb', 'ccc', 'ddd', 'eee'];
    const many = new BuildSpace(oneVariant(names.map((name) => option(name, { name }))));
    expect(words(any(...names.slice(0, 3).map(is)), many)).toBe('with the ccc; or with the bbb; or with the aaa');
    expect(words(any(...names.map(is)), many)).toBe('with the eee; with the ddd; with the ccc; and 2 more');
  });

  test('gives up counting a set that nobody could read', () => {
    const names = Array.from({ length: 12 }, (_, place) => `opt-${place}`);
    const many = new BuildSpace(oneVariant(names.map((name) => option(name))));
    const odd = names.reduce<ConditionExpr>((so, name) => any(all(so, none(is(name))), all(none(so), is(name))), any());
    expect(words(odd, many)).toMatch(/; and more$/);
  });

  test('three values of an outcome', () => {
    const marks = new BuildSpace(
      oneVariant([], { identify: [{ id: 'mark', name: 'mark', values: ['a', 'b', 'c'], when: { kind: 'always' } }] }),
    );
    expect(words(none(outcome('mark', 'b')), marks)).toBe('when the mark is a or c');
  });
});
