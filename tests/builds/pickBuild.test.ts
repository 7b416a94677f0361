import { describe, expect, test } from 'vitest';
import { BuildSpace, pickBuild } from '../../server/src/core/builds';
import { all, arrives, is, none, OSTREL_OVERHAUL, oneVariant, option, outcome } from './ostrel';

const space = new BuildSpace(OSTREL_OVERHAUL);

function picked(text: string, of = space) {
  const result = pickBuild(of, text);
  if (result.kind === 'refused') throw new Error(result.problems.map((problem) => problem.text).join('; '));
  return result;
}

function refusal(text: string, of = space) {
  const result = pickBuild(of, text);
  return result.kind === 'refused' ? result.problems.map((problem) => problem.text) : [`picked ${result.build.id}`];
}

describe('picking a build by its names', () => {
  test('options that are not named are not in the finished unit', () => {
    const { build, set } = picked('v4-28r');
    expect(build).toEqual({ id: 'v4-28r', label: 'V4-28R', variant: 'v4-28r', finished: [] });
    expect(set).toBe(space.set(all(is('v4-28r'), none(is('wheel-44'), is('cover-44')))));
  });

  test('how the unit arrives stays open unless it is said', () => {
    const open = picked('v4-28r, cover-44');
    expect(open.set.overlaps(space.set(arrives('cover-44')))).toBe(true);
    expect(open.set.isWithin(space.set(arrives('cover-44')))).toBe(false);
    const without = picked('v4-28r,cover-44,arrives=none');
    expect(without.set.overlaps(space.set(arrives('cover-44')))).toBe(false);
    expect(without.build.id).toBe('v4-28r,cover-44,arrives=none');
  });

  test('what arrives stays, so it need not be named twice', () => {
    const { build, set } = picked('v4-28r,wheel-44,arrives=cover-44');
    expect(build.finished).toEqual(['wheel-44', 'cover-44']);
    expect(build.arrives).toEqual(['cover-44']);
    expect(build.label).toBe(
      'V4-28R + 44 mm machined compressor wheel + compressor cover bored for the 44 mm wheel, received with compressor cover bored for the 44 mm wheel',
    );
    expect(set).toBe(space.set(all(is('wheel-44'), arrives('cover-44'))));
  });

  test('what arrives gives way to an option that replaces it', () => {
    const wheels = oneVariant([option('small', { excludes: ['large'] }), option('large')], {
      covers: { options: ['small'] },
      adds: ['large'],
    });
    const { build } = picked('large,arrives=small', new BuildSpace(wheels));
    expect(build).toMatchObject({ id: 'only,large,arrives=small', finished: ['large'], arrives: ['small'] });
  });

  test('outcomes stay open', () => {
    const { set } = picked('v4-28r');
    expect(set.overlaps(space.set(outcome('nut-hand', 'left')))).toBe(true);
    expect(set.overlaps(space.set(outcome('nut-hand', 'right')))).toBe(true);
  });

  test('its id picks it again', () => {
    for (const text of ['v4-20', 'cover-44 v4-20', 'v4-28r,wheel-44,arrives=cover-44', 'v4-20,arrives=none']) {
      const first = picked(text);
      expect(picked(first.build.id)).toEqual(first);
    }
  });

  test.each([
    ['v4-28r,wheel-45', ['No variant or option is called wheel-45; near: wheel-44']],
    ['v4-28r,arrives=cover-4', ['No variant or option is called arrives=cover-4; near: arrives=cover-44']],
    ['v4-28r,zzzzzz', ['No variant or option is called zzzzzz']],
    ['v4-20,v4-28r', ['A unit is one variant, not v4-20 and v4-28r']],
    ['', ['Name the variant: v4-20, v4-28r']],
    ['cover-44', ['Name the variant: v4-20, v4-28r']],
    ['v4-28r,wheel-44', ['wheel-44 needs cover-44']],
    ['v4-20,wheel-44,cover-44', ['wheel-44 is not for v4-20']],
    [
      'v4-28r,cover-44,arrives=wheel-44',
      ['No unit covered here arrives with wheel-44', 'wheel-44 needs cover-44 when it arrives'],
    ],
    ['v4-28r,nut-hand=left', ['nut-hand=left is found on the bench, so it is not part of a build']],
  ])('%s is refused with its reason', (text, reasons) => {
    expect(refusal(text)).toEqual(reasons);
  });

  test('a build that the procedure does not reach is refused with what contradicts', () => {
    const narrow = new BuildSpace({
      ...OSTREL_OVERHAUL,
      covers: { variants: ['v4-28r'], options: ['cover-44'] },
      adds: [],
    });
    expect(refusal('v4-20', narrow)).toEqual(['v4-20 is not covered here']);
    expect(refusal('cover-44,wheel-44', narrow)).toEqual(['wheel-44 is not covered here']);
    expect(refusal('cover-44,arrives=none', narrow)).toEqual(['No build is with cover-44, received without cover-44']);
  });

  test('options that exclude each other are refused', () => {
    const wheels = new BuildSpace(oneVariant([option('small', { excludes: ['large'] }), option('large')]));
    expect(refusal('small,large', wheels)).toEqual(['large and small exclude each other']);
    expect(refusal('arrives=small,arrives=large', wheels)).toEqual(['large and small exclude each other']);
  });
});
