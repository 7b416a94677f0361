import { describe, expect, test } from 'vitest';
import { type BuildFacts, BuildSpace, countBuilds } from '../../server/src/core/builds';
import { all, any, arrives, is, none, option, outcome } from './ostrel';

function family(options: BuildFacts['options'], outcomes: number): BuildFacts {
  return {
    variants: ['small', 'middle', 'large'].map((id) => ({ id, name: id })),
    options,
    identify: Array.from({ length: outcomes }, (_, place) => ({
      id: `find-${place}`,
      name: `find ${place}`,
      values: ['left', 'right', 'both'],
      when: any(is(`opt-${place % options.length}`), is('small')),
    })),
    renewable: [],
  };
}

/** Neighbours in the list need or exclude each other, and the list is shuffled so that the order must be found. */
function chained(count: number): BuildFacts['options'] {
  const options = Array.from({ length: count }, (_, place) =>
    option(`opt-${place}`, {
      variants: place % 4 === 0 ? ['middle', 'large'] : [],
      needs: place % 2 === 1 ? [`opt-${place - 1}`] : [],
      excludes: place % 2 === 0 && place > 0 ? [`opt-${place - 2}`] : [],
    }),
  );
  return options.map((_, place) => options[(place * 7) % count] ?? option('none-left'));
}

describe('size of the decision diagram', () => {
  test('12 options with constraints stay small, both as received and as finished', () => {
    const space = new BuildSpace(family(chained(12), 0));
    expect(countBuilds(space.everything, space)).toBeGreaterThan(50);
    expect(space.diagram.nodeCount).toBeLessThan(1000);
    expect(space.diagram.operationCount).toBeLessThan(1500);
  });

  test('40 options grow about in proportion', () => {
    const space = new BuildSpace(family(chained(40), 0));
    expect(countBuilds(space.everything, space)).toBeGreaterThan(1e6);
    expect(space.diagram.nodeCount).toBeLessThan(3000);
    expect(space.diagram.operationCount).toBeLessThan(4500);
  });

  test('40 options without constraints are 40 separate choices', () => {
    const space = new BuildSpace(
      family(
        Array.from({ length: 40 }, (_, place) => option(`opt-${place}`)),
        0,
      ),
    );
    expect(countBuilds(space.everything, space)).toBe(3 * 2 ** 40);
    expect(space.diagram.nodeCount).toBeLessThan(500);
  });

  test('40 wheels of which a unit has one', () => {
    const ids = Array.from({ length: 40 }, (_, place) => `opt-${place}`);
    const space = new BuildSpace(
      family(
        ids.map((id) => option(id, { excludes: ids.filter((other) => other !== id) })),
        0,
      ),
    );
    expect(countBuilds(space.everything, space)).toBe(3 * 41);
    expect(space.diagram.nodeCount).toBeLessThan(20_000);
  });

  test('outcomes cost nothing until one is asked for, and then only that one', () => {
    const without = new BuildSpace(family(chained(12), 0));
    const space = new BuildSpace(family(chained(12), 200));
    expect(space.diagram.nodeCount).toBe(without.diagram.nodeCount);
    space.set(outcome('find-3', 'right'));
    expect(space.diagram.nodeCount).toBeLessThan(without.diagram.nodeCount + 300);
  });

  test('asking twice costs nothing', () => {
    const space = new BuildSpace(family(chained(12), 4));
    const expr = all(any(is('opt-3'), outcome('find-1', 'left')), none(arrives('opt-5')));
    const first = space.set(expr);
    const { operationCount } = space.diagram;
    expect(space.set(expr)).toBe(first);
    expect(space.diagram.operationCount).toBe(operationCount);
  });
});
