import { describe, expect, test } from 'vitest';
import { BuildSpace } from '../../server/src/core/builds';
import { all, any, arrives, is, none, OSTREL, OSTREL_OVERHAUL, oneVariant, option, outcome } from './ostrel';

describe('what exists', () => {
  const space = new BuildSpace(OSTREL_OVERHAUL);

  test('a unit is exactly one variant', () => {
    expect(space.set(all(is('v4-20'), is('v4-28r'))).isEmpty).toBe(true);
    expect(space.set(any(is('v4-20'), is('v4-28r')))).toBe(space.everything);
  });

  test('an option brings what it needs and the variants it is for', () => {
    expect(space.set(is('wheel-44')).isWithin(space.set(all(is('cover-44'), is('v4-28r'))))).toBe(true);
    expect(space.set(all(is('cover-44'), none(is('wheel-44')))).isEmpty).toBe(false);
  });

  test('an option arrives only where it is covered', () => {
    expect(space.set(arrives('wheel-44')).isEmpty).toBe(true);
    expect(space.set(arrives('cover-44')).isEmpty).toBe(false);
    expect(space.set(is('wheel-44')).isEmpty).toBe(false);
  });

  test('what arrives stays, and what may be added need not be', () => {
    expect(space.set(arrives('cover-44')).isWithin(space.set(is('cover-44')))).toBe(true);
    expect(space.set(all(is('cover-44'), none(arrives('cover-44')))).isEmpty).toBe(false);
    expect(space.set(none(is('cover-44'), arrives('cover-44'))).isEmpty).toBe(false);
  });

  test('an option can be asked for as the unit was received', () => {
    expect(space.set(is('cover-44'), 'received')).toBe(space.set(arrives('cover-44')));
    expect(space.set(is('v4-20'), 'received')).toBe(space.set(is('v4-20')));
  });

  test('variants that are not covered do not exist, nor does what is only for them', () => {
    const narrow = new BuildSpace({ ...OSTREL, covers: { variants: ['v4-20'] }, adds: ['wheel-44'] });
    expect(narrow.set(is('v4-20'))).toBe(narrow.everything);
    expect(narrow.set(is('wheel-44')).isEmpty).toBe(true);
    expect(narrow.unknownNames(is('v4-28r'))).toEqual([]);
  });

  test('a family on its own lets every option arrive and be added', () => {
    const family = new BuildSpace(OSTREL);
    expect(family.set(arrives('wheel-44')).isEmpty).toBe(false);
    expect(family.set(all(is('wheel-44'), none(arrives('wheel-44')))).isEmpty).toBe(false);
  });

  test('a procedure that says what it covers adds nothing of its own accord', () => {
    const procedure = new BuildSpace({ ...OSTREL, covers: { options: ['cover-44'] } });
    expect(procedure.set(is('cover-44'))).toBe(procedure.set(arrives('cover-44')));
    expect(procedure.set(is('wheel-44')).isEmpty).toBe(true);
  });
});

describe('replacing', () => {
  const wheels = [option('small', { excludes: ['large'] }), option('large'), option('shim', { needs: ['small'] })];

  test('an added option takes the place of one that it excludes, whichever of the two says so', () => {
    const space = new BuildSpace(oneVariant(wheels, { covers: { options: ['small'] }, adds: ['large'] }));
    expect(space.set(all(arrives('small'), is('large'))).isEmpty).toBe(false);
    expect(
      space.set(all(arrives('small'), none(is('small')))).equals(space.set(all(arrives('small'), is('large')))),
    ).toBe(true);
    expect(space.set(all(is('small'), is('large'))).isEmpty).toBe(true);
  });

  test('nothing is replaced by an option that is not added', () => {
    const space = new BuildSpace(oneVariant(wheels, { covers: { options: ['small', 'large'] }, adds: ['small'] }));
    expect(space.set(all(arrives('small'), none(is('small')))).isEmpty).toBe(true);
    expect(space.set(all(arrives('large'), is('small'))).isEmpty).toBe(false);
  });

  test('what needed the replaced option keeps it from being replaced', () => {
    const space = new BuildSpace(oneVariant(wheels, { covers: { options: ['small', 'shim'] }, adds: ['large'] }));
    expect(space.set(all(arrives('shim'), is('large'))).isEmpty).toBe(true);
  });
});

describe('outcomes', () => {
  const space = new BuildSpace(OSTREL_OVERHAUL);
  const [left, right] = [space.set(outcome('nut-hand', 'left')), space.set(outcome('nut-hand', 'right'))];

  test('have exactly one value where they exist, and none elsewhere', () => {
    expect(left.overlaps(right)).toBe(false);
    expect(left.or(right)).toBe(space.set(is('v4-28r')));
    expect(space.outcomeExists('nut-hand')).toBe(space.set(is('v4-28r')));
    expect(left.isEmpty).toBe(false);
  });

  test('a part renewed on condition is re-used or renewed', () => {
    const renewed = space.set(outcome('compressor-wheel', 'renewed'));
    expect(renewed.complement()).toBe(space.set(outcome('compressor-wheel', 're-used')));
  });

  test('what a set hangs on is told', () => {
    expect(space.outcomesOf(left.and(space.set(is('wheel-44'))))).toEqual(['nut-hand']);
    expect(space.outcomesOf(left.or(right))).toEqual([]);
    expect(space.aspectsOf(space.everything)).toEqual([]);
    expect(space.withOutcomesOpen(left)).toBe(space.set(is('v4-28r')));
  });

  test('one may exist only after another was found', () => {
    const facts = oneVariant([], {
      identify: [
        { id: 'groove', name: 'groove', values: ['there', 'missing'], when: { kind: 'always' } },
        { id: 'colour', name: 'colour', values: ['red', 'blue', 'none'], when: outcome('groove', 'there') },
      ],
    });
    const nested = new BuildSpace(facts);
    expect(nested.set(outcome('colour', 'blue')).isWithin(nested.set(outcome('groove', 'there')))).toBe(true);
    expect(nested.outcomeExists('colour')).toBe(nested.set(outcome('groove', 'there')));
  });
});

describe('sets', () => {
  const space = new BuildSpace(OSTREL_OVERHAUL);

  test('never leave what exists', () => {
    const set = space.set(none(is('wheel-44')));
    expect(set.isWithin(space.everything)).toBe(true);
    expect(set.complement()).toBe(space.set(is('wheel-44')));
    expect(set.or(set.complement())).toBe(space.everything);
    expect(space.everything.minus(set)).toBe(space.set(is('wheel-44')));
  });

  test('of two spaces cannot be mixed', () => {
    expect(() => space.everything.and(new BuildSpace(OSTREL).everything)).toThrow('two different build spaces');
  });

  test('any of nothing never holds, all and none of nothing always do', () => {
    expect(space.set(any()).isEmpty).toBe(true);
    expect(space.set(all()).isEverything).toBe(true);
    expect(space.set(none()).isEverything).toBe(true);
  });
});
