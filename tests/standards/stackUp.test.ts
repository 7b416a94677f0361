import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parseQuantity } from '../../server/src/core/quantity';
import { type StackLink, stackLink, stackUp } from '../../server/src/core/standards/stackUp';

/** A chain of written lengths, each with its sign before it: `+12.5 ± 0.1 mm`. */
function chain(...written: readonly string[]): readonly StackLink[] {
  return written.map((text, index) => {
    const { quantity } = parseQuantity(text.slice(1), 'length');
    const link = quantity && stackLink(`d${index + 1}`, text.startsWith('+') ? 1 : -1, quantity);
    if (link === undefined) throw new Error(`${text} is no length`);
    return link;
  });
}

function bounded(...written: readonly string[]) {
  const result = stackUp(chain(...written));
  if (result.kind !== 'bounded') throw new Error('the chain is open');
  return result;
}

describe('a chain of dimensions', () => {
  test('of one dimension is that dimension', () => {
    const { nominal, worst, statistical } = bounded('+12.5 ± 0.1 mm');
    expect(nominal).toBe(12.5);
    expect(worst).toEqual({ lowest: 12.4, highest: 12.6 });
    expect(statistical).toEqual(worst);
  });

  test('of none is nothing', () => {
    expect(stackUp([])).toMatchObject({ kind: 'bounded', nominal: 0, worst: { lowest: 0, highest: 0 } });
  });

  test('takes ranges, and tolerances to one side, about their middle', () => {
    const { nominal, middle, worst } = bounded('+9.000..9.010 mm', '-8.970 +0.000/-0.010 mm');
    expect(nominal).toBeCloseTo(0.035, 12);
    expect(middle).toBe(0.04);
    expect(worst).toEqual({ lowest: 0.03, highest: 0.05 });
  });

  test('mixes inches and millimetres', () => {
    const { nominal, worst } = bounded('+1 ± 0.001 in', '-25 ± 0.02 mm');
    expect(nominal).toBe(0.4);
    expect(worst).toEqual({ lowest: 0.3546, highest: 0.4454 });
  });

  test('with a limit to one side cannot be added up, and says which one it is', () => {
    expect(stackUp(chain('+12 ± 0.1 mm', '-≤ 11.5 mm', '-≥ 0.1 mm'))).toEqual({ kind: 'open', open: ['d2', 'd3'] });
  });

  test('shows every dimension with its sign and both sums', () => {
    const { steps } = bounded('+3 ± 0.3 mm', '-2 ± 0.4 mm');
    expect(steps.map(({ symbol, value }) => `${symbol} ${value}`)).toEqual([
      '+x 3',
      'x_min 2.7',
      'x_max 3.3',
      '−x 2',
      'x_min 1.6',
      'x_max 2.4',
      'X 1',
      'X_m 1',
      'T 0.7',
      'T_s 0.5',
    ]);
  });
});

test('a torque is no link', () => {
  const { quantity } = parseQuantity('5 ± 0.3 N·m', 'torque');
  expect(quantity && stackLink('t', 1, quantity)).toBeUndefined();
});

test('the statistical range lies within the worst case, and the worst case holds every choice of sizes', () => {
  const dimension = fc.record({
    sign: fc.constantFrom<(1 | -1)[]>(1, -1),
    lowest: fc.integer({ min: 1, max: 100_000 }),
    width: fc.integer({ min: 0, max: 500 }),
    /** Where within its tolerance the dimension happens to lie. */
    at: fc.double({ min: 0, max: 1, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(dimension, { minLength: 1, maxLength: 8 }), (dimensions) => {
      const links = dimensions.map(({ sign, lowest, width }, index): StackLink => {
        const [low, high] = [lowest / 1000, (lowest + width) / 1000];
        return { name: `d${index}`, sign, bounds: { lowest: low, nominal: low, highest: high } };
      });
      const gap = dimensions.reduce(
        (sum, { sign, lowest, width, at }) => sum + (sign * (lowest + at * width)) / 1000,
        0,
      );
      const result = stackUp(links);
      if (result.kind !== 'bounded') return false;
      const { worst, statistical } = result;
      const noise = 1e-9;
      return (
        worst.lowest - noise <= gap &&
        gap <= worst.highest + noise &&
        worst.lowest - noise <= statistical.lowest &&
        statistical.highest <= worst.highest + noise
      );
    }),
  );
});
