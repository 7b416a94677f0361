import { describe, expect, test } from 'vitest';
import { BuildSpace, buildsOf, countBuilds } from '../../server/src/core/builds';
import { is, OSTREL_OVERHAUL, oneVariant, option, outcome } from './ostrel';

const space = new BuildSpace(OSTREL_OVERHAUL);

describe('the builds of a set', () => {
  test('are the finished units, the plainest first', () => {
    expect(buildsOf(space.everything, space, 100).map(({ id }) => id)).toEqual([
      'v4-20',
      'v4-28r',
      'v4-20,cover-44',
      'v4-28r,cover-44',
      'v4-28r,wheel-44,cover-44',
    ]);
    expect(countBuilds(space.everything, space)).toBe(5);
  });

  test('have a label for people', () => {
    const [first] = buildsOf(space.set(is('wheel-44')), space, 1);
    expect(first?.label).toBe('V4-28R + 44 mm machined compressor wheel + compressor cover bored for the 44 mm wheel');
  });

  test('are counted whatever the bench will find', () => {
    expect(countBuilds(space.set(outcome('nut-hand', 'left')), space)).toBe(3);
    expect(buildsOf(space.nothing, space, 9)).toEqual([]);
    expect(countBuilds(space.nothing, space)).toBe(0);
  });

  test('stop at the limit without walking through all of them', () => {
    const many = new BuildSpace(oneVariant(Array.from({ length: 40 }, (_, place) => option(`opt-${place}`))));
    const before = many.diagram.operationCount;
    expect(buildsOf(many.everything, many, 3).map(({ id }) => id)).toEqual(['only', 'only,opt-0', 'only,opt-1']);
    expect(many.diagram.operationCount - before).toBeLessThan(20_000);
    expect(countBuilds(many.everything, many)).toBe(2 ** 40);
  });
});
