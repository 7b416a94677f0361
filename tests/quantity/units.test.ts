import { describe, expect, test } from 'vitest';
import {
  allUnits,
  dimensionFacts,
  dimensions,
  findUnit,
  fromBase,
  parseQuantity,
  toBase,
  usualUnits,
} from '../../server/src/core/quantity';
import { alternatives, isStandardSpelling, unitKeysAt } from '../../server/src/core/quantity/spellings';

test('every dimension has its base unit, of size one, and offers units of its own', () => {
  for (const dimension of dimensions) {
    const { base, usual } = dimensionFacts[dimension];
    expect(findUnit(dimension, base), dimension).toMatchObject({ factor: 1, zeroAt: 0 });
    expect(usualUnits(dimension), dimension).toHaveLength(usual.length);
  }
});

describe.each(allUnits.map((unit) => ({ unit, name: `${unit.symbol} (${unit.dimension})` })))('$name', ({ unit }) => {
  const read = (spelling: string) => parseQuantity(`7 ${spelling}`, unit.dimension);

  test('its symbols are standard', () => {
    for (const symbol of [unit.symbol, unit.symbol.replaceAll('·', ' '), ...unit.alsoStandard]) {
      const { quantity, problems } = parseQuantity(`7${unit.gap === 'none' ? '' : ' '}${symbol}`, unit.dimension);
      expect(problems, symbol).toEqual([]);
      expect(quantity?.unit, symbol).toBe(unit);
    }
  });

  test('its other spellings are read and mended', () => {
    for (const spelling of [...unit.accepted, ...unit.doubtful].flatMap(alternatives)) {
      if (isStandardSpelling(spelling, unit)) continue;
      const doubtful = unit.doubtful.flatMap(alternatives).includes(spelling);
      const { quantity, problems } = read(spelling);
      expect(quantity?.unit, spelling).toBe(unit);
      expect(problems, spelling).toMatchObject([{ kind: 'unit-spelling', unit, doubtful }]);
      expect(unitKeysAt(spelling, 0).at(-1)?.end, spelling).toBe(spelling.length);
    }
  });

  test('a value goes to the base unit and back', () => {
    expect(fromBase(toBase(7.25, unit), unit)).toBeCloseTo(7.25, 10);
  });
});
