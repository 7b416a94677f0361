import { describe, expect, test } from 'vitest';
import { BuildSpace } from '../../server/src/core/builds';
import { any, arrives, is, none, OSTREL, OSTREL_OVERHAUL, oneVariant, option, outcome } from './ostrel';

describe('unknown names in a condition', () => {
  const space = new BuildSpace(OSTREL_OVERHAUL);

  test('are never true and come with what may have been meant', () => {
    const expr = any(
      is('wheel-45'),
      arrives('cover-4'),
      outcome('nut-hand', 'lefft'),
      outcome('nut-hnad', 'left'),
      is('v4-20'),
    );
    expect(space.set(expr)).toBe(space.set(is('v4-20')));
    expect(space.unknownNames(expr).map(({ text, near }) => [text, near])).toEqual([
      ['wheel-45', ['wheel-44']],
      ['arrives=cover-4', ['arrives=cover-44']],
      ['nut-hand=lefft', ['nut-hand=left']],
      ['nut-hnad=left', ['nut-hand=left']],
    ]);
    expect(space.set(none(is('wheel-45'))).isEverything).toBe(true);
  });

  test('a variant does not arrive, and an outcome is not a name by itself', () => {
    expect(space.unknownNames(arrives('v4-20'))).toHaveLength(1);
    expect(space.unknownNames(is('nut-hand'))).toHaveLength(1);
  });
});

describe('broken facts', () => {
  test('a need that nothing fills is told, and the option never exists', () => {
    const space = new BuildSpace(oneVariant([option('wheel', { needs: ['coverr'] }), option('cover')]));
    expect(space.problems).toEqual([{ kind: 'unknown-name', name: 'coverr', owner: 'wheel', key: 'needs' }]);
    expect(space.set(is('wheel')).isEmpty).toBe(true);
    expect(space.set(is('cover')).isEmpty).toBe(false);
  });

  test('of two things with one id the first counts', () => {
    const facts = oneVariant([option('wheel'), option('wheel', { variants: ['nobody'] }), option('only')]);
    const space = new BuildSpace(facts);
    expect(space.problems.filter(({ kind }) => kind === 'duplicate-id')).toHaveLength(2);
    expect(space.set(is('wheel')).isEmpty).toBe(false);
    expect(space.set(is('only'))).toBe(space.everything);
  });

  test('options that need each other come together', () => {
    const space = new BuildSpace(oneVariant([option('aaa', { needs: ['bbb'] }), option('bbb', { needs: ['aaa'] })]));
    expect(space.set(is('aaa'))).toBe(space.set(is('bbb')));
    expect(space.set(is('aaa')).isEmpty).toBe(false);
    expect(space.problems).toEqual([]);
  });

  test('an option that excludes itself is told and still exists', () => {
    const space = new BuildSpace(oneVariant([option('aaa', { excludes: ['aaa'] })]));
    expect(space.problems).toEqual([{ kind: 'excludes-itself', id: 'aaa' }]);
    expect(space.set(is('aaa')).isEmpty).toBe(false);
  });

  test('an option that needs what it excludes never exists', () => {
    const space = new BuildSpace(oneVariant([option('aaa', { needs: ['bbb'], excludes: ['bbb'] }), option('bbb')]));
    expect(space.problems).toEqual([{ kind: 'option-never-exists', id: 'aaa' }]);
  });

  test('outcomes that wait for each other are never found', () => {
    const facts = oneVariant([], {
      identify: [
        { id: 'aaa', name: 'a', values: ['x', 'y'], when: outcome('bbb', 'x') },
        { id: 'bbb', name: 'b', values: ['x', 'y'], when: outcome('aaa', 'y') },
        { id: 'ccc', name: 'c', values: ['x', 'y'], when: none(outcome('bbb', 'x')) },
        { id: 'ddd', name: 'd', values: [], when: is('nobody') },
      ],
    });
    const space = new BuildSpace(facts);
    expect(space.set(outcome('aaa', 'x')).isEmpty).toBe(true);
    expect(space.outcomeExists('ccc').isEverything).toBe(true);
    expect(space.problems).toEqual([
      { kind: 'outcome-cycle', id: 'aaa' },
      { kind: 'outcome-cycle', id: 'bbb' },
      { kind: 'outcome-without-values', id: 'ddd' },
      { kind: 'unknown-name', name: 'nobody', owner: 'ddd', key: 'when' },
    ]);
  });

  test('a procedure that covers only unknown variants covers the family, so that checks do not fall silent', () => {
    const space = new BuildSpace({ ...OSTREL, covers: { variants: ['v4-2'] } });
    expect(space.set(is('v4-28r')).isEmpty).toBe(false);
    expect(space.problems).toEqual([{ kind: 'unknown-name', name: 'v4-2', owner: '', key: 'covers' }]);
  });

  test('a family without variants still has builds', () => {
    const space = new BuildSpace({ variants: [], options: [option('aaa')], identify: [], renewable: [] });
    expect(space.everything.isEmpty).toBe(false);
    expect(space.set(is('aaa')).isEmpty).toBe(false);
  });
});
