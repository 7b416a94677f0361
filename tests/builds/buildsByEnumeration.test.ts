import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { BuildTerm } from '../../server/src/core/builds';
import {
  type BuildFacts,
  BuildSpace,
  buildsOf,
  type ConditionExpr,
  countBuilds,
  coverOf,
  pickBuild,
} from '../../server/src/core/builds';
import { all, arrives, is, none, outcome } from './ostrel';

/** One build with all its outcomes, listed one by one to hold the symbolic answers against. */
interface Point {
  readonly variant: string;
  readonly received: ReadonlySet<string>;
  readonly finished: ReadonlySet<string>;
  readonly outcomes: ReadonlyMap<string, string>;
}

const VARIANTS = ['var-a', 'var-b', 'var-c'];
const OPTIONS = ['opt-a', 'opt-b', 'opt-c'];
const OUTCOMES = ['find-a', 'find-b', 'part-c'];
const VALUES = ['left', 'right', 'both'];

function conditions(outcomes: readonly string[]): fc.Arbitrary<ConditionExpr> {
  const id = fc.constantFrom(...VARIANTS, ...OPTIONS, 'unknown');
  const named = outcomes.map((name) =>
    fc.constantFrom(...VALUES, 're-used', 'renewed').map((value) => outcome(name, value)),
  );
  const atom = fc.oneof(id.map(is), fc.constantFrom(...OPTIONS, 'unknown').map(arrives), ...named);
  const { expr } = fc.letrec<{ expr: ConditionExpr }>((tie) => ({
    expr: fc.oneof(
      { depthSize: 'small' },
      atom,
      fc.constant({ kind: 'always' } as const),
      fc.record({ kind: fc.constantFrom('any', 'all', 'none'), of: fc.array(tie('expr'), { maxLength: 3 }) }),
    ),
  }));
  return expr;
}

const names = (from: readonly string[]) =>
  fc.subarray([...from, 'unknown']).filter((ids) => !ids.includes('unknown') || ids.length === 2);

const options = fc.tuple(
  ...OPTIONS.map((id) =>
    fc.record({
      id: fc.constant(id),
      name: fc.constant(id),
      variants: names(VARIANTS),
      needs: names(OPTIONS),
      excludes: fc.subarray(OPTIONS, { maxLength: 1 }),
    }),
  ),
);

const facts: fc.Arbitrary<BuildFacts> = fc.record(
  {
    variants: fc.subarray(VARIANTS, { minLength: 1 }).map((ids) => ids.map((id) => ({ id, name: id }))),
    options,
    identify: fc.tuple(
      fc.record({
        id: fc.constant('find-a'),
        name: fc.constant('a'),
        values: fc.subarray(VALUES, { minLength: 1 }),
        when: conditions([]),
      }),
      fc.record({
        id: fc.constant('find-b'),
        name: fc.constant('b'),
        values: fc.subarray(VALUES, { minLength: 1 }),
        when: conditions(['find-a']),
      }),
    ),
    renewable: fc.tuple(fc.record({ id: fc.constant('part-c'), name: fc.constant('c'), when: conditions(['find-b']) })),
    covers: fc.record({ variants: fc.subarray(VARIANTS), options: fc.subarray(OPTIONS) }, { requiredKeys: [] }),
    adds: fc.subarray(OPTIONS),
  },
  { requiredKeys: ['variants', 'options', 'identify', 'renewable'] },
);

function subsets(ids: readonly string[]): ReadonlySet<string>[] {
  return Array.from({ length: 2 ** ids.length }, (_, bits) => new Set(ids.filter((_id, place) => (bits >> place) & 1)));
}

function unitFits(given: BuildFacts, variant: string, unit: ReadonlySet<string>): boolean {
  return given.options.every(({ id, variants = [], needs, excludes }) => {
    if (!unit.has(id)) return true;
    const excluded = excludes.some((other) => other !== id && unit.has(other));
    return (variants.length === 0 || variants.includes(variant)) && needs.every((need) => unit.has(need)) && !excluded;
  });
}

function excludeEachOther(given: BuildFacts, one: string, other: string): boolean {
  const says = (from: string, to: string) =>
    given.options.some(({ id, excludes }) => id === from && excludes.includes(to));
  return one !== other && (says(one, other) || says(other, one));
}

function workLeadsTo(given: BuildFacts, received: ReadonlySet<string>, finished: ReadonlySet<string>): boolean {
  const mayAdd = given.adds ?? (given.covers === undefined ? OPTIONS : []);
  const added = OPTIONS.filter((id) => finished.has(id) && !received.has(id));
  const gone = OPTIONS.filter((id) => received.has(id) && !finished.has(id));
  return (
    [...received].every((id) => (given.covers?.options ?? OPTIONS).includes(id)) &&
    added.every((id) => mayAdd.includes(id)) &&
    gone.every((id) => added.some((other) => excludeEachOther(given, id, other)))
  );
}

function holdsAt(expr: ConditionExpr, at: Point): boolean {
  switch (expr.kind) {
    case 'always':
      return true;
    case 'is':
      return at.variant === expr.id || at.finished.has(expr.id);
    case 'arrives':
      return at.received.has(expr.id);
    case 'outcome':
      return at.outcomes.get(expr.name) === expr.value;
    case 'all':
      return expr.of.every((part) => holdsAt(part, at));
    case 'any':
      return expr.of.some((part) => holdsAt(part, at));
    case 'none':
      return !expr.of.some((part) => holdsAt(part, at));
  }
}

function withOutcomes(given: BuildFacts, build: Point): Point[] {
  const parts = given.renewable.map((part) => ({ ...part, values: ['re-used', 'renewed'] }));
  let points = [build];
  for (const { id, values, when } of [...given.identify, ...parts]) {
    points = points.flatMap((point) => {
      if (!holdsAt(when, point)) return [point];
      return values.map((value) => ({ ...point, outcomes: new Map(point.outcomes).set(id, value) }));
    });
  }
  return points;
}

function enumerate(given: BuildFacts): Point[] {
  const family = given.variants.map(({ id }) => id);
  const covered = family.filter((id) => given.covers?.variants?.includes(id));
  return (covered.length > 0 ? covered : family).flatMap((variant) =>
    subsets(OPTIONS).flatMap((received) =>
      subsets(OPTIONS).flatMap((finished) => {
        const exists = unitFits(given, variant, received) && unitFits(given, variant, finished);
        const build = { variant, received, finished, outcomes: new Map() };
        return exists && workLeadsTo(given, received, finished) ? withOutcomes(given, build) : [];
      }),
    ),
  );
}

function exactly({ variant, received, finished, outcomes }: Point): ConditionExpr {
  return all(
    is(variant),
    ...OPTIONS.map((id) => (received.has(id) ? arrives(id) : none(arrives(id)))),
    ...OPTIONS.map((id) => (finished.has(id) ? is(id) : none(is(id)))),
    ...OUTCOMES.map((id) => {
      const value = outcomes.get(id);
      if (value !== undefined) return outcome(id, value);
      return none(...[...VALUES, 're-used', 'renewed'].map((other) => outcome(id, other)));
    }),
  );
}

function termHolds(term: BuildTerm, at: Point): boolean {
  if (term.kind === 'variants') return term.ids.includes(at.variant);
  if (term.kind === 'outcome') return term.values.includes(at.outcomes.get(term.id) ?? '');
  return (term.kind === 'finished' ? at.finished : at.received).has(term.id) === term.present;
}

function sameIds(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  return one.size === other.size && [...one].every((id) => other.has(id));
}

function check(runs: number, property: (given: BuildFacts, expr: ConditionExpr) => void): void {
  const seed = Math.floor(Math.random() * 2 ** 31);
  console.info(`builds by enumeration: seed ${seed}`);
  fc.assert(fc.property(facts, conditions(OUTCOMES), property), { seed, numRuns: runs });
}

describe('symbolic answers against every build listed one by one', () => {
  test('exactly the builds and outcomes that should exist do, and conditions hold where they should', () => {
    check(150, (given, expr) => {
      const space = new BuildSpace(given);
      const set = space.set(expr);
      const points = enumerate(given);
      let listed = space.nothing;
      for (const point of points) {
        const place = space.set(exactly(point));
        expect(place.isEmpty).toBe(false);
        expect(place.overlaps(set)).toBe(holdsAt(expr, point));
        expect(place.isWithin(set)).toBe(holdsAt(expr, point));
        listed = listed.or(place);
      }
      expect(listed).toBe(space.everything);
    });
  });

  test('finished builds are listed and counted once each', () => {
    check(150, (given, expr) => {
      const space = new BuildSpace(given);
      const set = space.set(expr);
      const expected = new Set(
        enumerate(given)
          .filter((point) => holdsAt(expr, point))
          .map(({ variant, finished }) => [variant, ...OPTIONS.filter((id) => finished.has(id))].join(',')),
      );
      const ids = buildsOf(set, space, 1000).map(({ id }) => id);
      expect([...ids].sort()).toEqual([...expected].sort());
      expect(countBuilds(set, space)).toBe(expected.size);
    });
  });

  test('a finished unit can be picked by its names just where it exists', () => {
    check(100, (given) => {
      const space = new BuildSpace(given);
      const points = enumerate(given);
      for (const variant of given.variants.map(({ id }) => id)) {
        for (const finished of subsets(OPTIONS)) {
          const same = points.filter((point) => point.variant === variant && sameIds(point.finished, finished));
          const result = pickBuild(space, [variant, ...finished].join(','));
          expect(result.kind).toBe(same.length > 0 ? 'picked' : 'refused');
          if (result.kind === 'picked') {
            expect(result.set).toBe(space.union(same.map((point) => space.set(exactly(point)))));
          }
        }
      }
    });
  });

  test('a unit can be picked as received and as finished', () => {
    check(100, (given) => {
      const space = new BuildSpace(given);
      for (const { variant, received, finished } of enumerate(given)) {
        const came = received.size === 0 ? ['none'] : [...received];
        const result = pickBuild(space, [variant, ...finished, ...came.map((id) => `arrives=${id}`)].join(','));
        if (result.kind === 'refused') expect(result.problems).toEqual([]);
        else expect([result.build.finished, result.build.arrives]).toEqual([[...finished], [...received]]);
      }
    });
  });

  test('the cubes of a set say the set, and none of their terms is needless', () => {
    check(150, (given, expr) => {
      const space = new BuildSpace(given);
      const points = enumerate(given);
      const { cubes, complete } = coverOf(space.set(expr), space);
      const said = (at: Point) => cubes.some((cube) => cube.every((term) => termHolds(term, at)));
      for (const point of points) if (complete || said(point)) expect(said(point)).toBe(holdsAt(expr, point));
      for (const cube of cubes) {
        for (const term of cube.filter(({ kind }) => kind !== 'variants')) {
          const rest = cube.filter((other) => other !== term);
          const wider = points.filter((point) => rest.every((other) => termHolds(other, point)));
          expect(wider.every((point) => holdsAt(expr, point))).toBe(false);
        }
      }
    });
  });
});
