import { describe, expect, test } from 'vitest';
import {
  BuildSpace,
  describeBuilds,
  parseConditionText,
  type ValueEntry,
  valuesByBuild,
} from '../../server/src/core/builds';
import { is, OSTREL_OVERHAUL } from './ostrel';

const space = new BuildSpace(OSTREL_OVERHAUL);

function entries(...keys: string[]): ValueEntry[] {
  return keys.map((key) => ({ key, expr: parseConditionText(key) ?? { kind: 'any', of: [] } }));
}

describe('a value by build', () => {
  test('that says each build and outcome once is exclusive and complete', () => {
    const hand = valuesByBuild(space, entries('v4-20', 'nut-hand=left', 'nut-hand=right'));
    expect(hand.overlaps).toEqual([]);
    expect(hand.absent.isEmpty).toBe(true);
    expect(hand.neverTrue).toEqual([]);
    expect(space.union(hand.coverage).isEverything).toBe(true);
  });

  test('that says some twice tells which pairs, and where', () => {
    const hand = valuesByBuild(space, entries('v4-20', 'nut-hand=left', 'nut-hand=right', 'v4-28r'));
    expect(hand.overlaps.map(({ first, second, where }) => [first, second, describeBuilds(where, space)])).toEqual([
      [1, 3, 'V4-28R, when the hand of the compressor nut is left'],
      [2, 3, 'V4-28R, when the hand of the compressor nut is right'],
    ]);
  });

  test('that leaves some out is absent there, or takes otherwise', () => {
    expect(describeBuilds(valuesByBuild(space, entries('v4-20')).absent, space)).toBe('V4-28R');
    const filled = valuesByBuild(space, entries('v4-20'), { otherwise: true });
    expect(filled.absent.isEmpty).toBe(true);
    expect(filled.otherwise).toBe(space.set(is('v4-28r')));
  });

  test('tells the entries that never apply where the value is looked at', () => {
    const seen = valuesByBuild(space, entries('v4-20', 'v4-28r', 'nobody'), { within: space.set(is('wheel-44')) });
    expect(seen.neverTrue).toEqual([0, 2]);
    expect(seen.absent.isEmpty).toBe(true);
  });

  test('can be of the unit as received', () => {
    const received = valuesByBuild(space, entries('wheel-44', 'cover-44'), { as: 'received' });
    expect(received.neverTrue).toEqual([0]);
    expect(received.overlaps).toEqual([]);
  });
});
