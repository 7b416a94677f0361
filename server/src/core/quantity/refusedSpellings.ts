import type { Dimension } from './dimension';
import type { Unit } from './unit';
import { findUnit } from './units';

/** Spellings that say too little where a dimension is expected, and what may have been meant, most usual first. */
export interface RefusedSpelling {
  readonly dimension: Dimension;
  readonly spellings: readonly string[];
  readonly candidates: readonly Unit[];
}

/**
 * A torque in pounds may be in pound-force feet or inches, a factor of twelve apart; quotation marks are inches and feet
 * to one reader, seconds and minutes to another. What is refused is common practice, no source.
 */
export const refusedSpellings: readonly RefusedSpelling[] = [
  refuse('torque', 'lb lbs lbf pound pounds #', 'lbf·ft', 'lbf·in'),
  refuse('torque', 'psi', 'lbf·in', 'lbf·ft'),
  refuse('torque', 'kg kgs kilo kilos kilogram kilograms kgf kp', 'kgf·m', 'kgf·cm'),
  refuse('torque', 'oz ozf ounce ounces', 'ozf·in'),
  refuse('torque', 'N newton newtons', 'N·m', 'N·cm'),
  refuse('length', "\" '' ″", 'in'),
  refuse('length', "' ′", 'ft'),
  refuse('length', 'mu', 'µm'),
  refuse('angle', "\" ''", '″'),
  refuse('angle', "'", '′'),
  refuse('temperature', '° deg degree degrees', '°C', '°F'),
  refuse('temperature-difference', '° deg degree degrees', 'K', '°C', '°F'),
  refuse('pressure', 'lb lbs lbf pound pounds #', 'psi'),
  refuse('pressure', 'kg kgf kp kilo kilos', 'kgf/cm²'),
  refuse('pressure', 'in inch inches "', 'inHg', 'inH₂O'),
  refuse('time', 'm', 'min'),
  refuse('resistance', 'k K', 'kΩ'),
  refuse('resistance', 'M', 'MΩ', 'mΩ'),
];

function refuse(dimension: Dimension, spellings: string, ...symbols: readonly string[]): RefusedSpelling {
  const candidates = symbols.flatMap((symbol) => findUnit(dimension, symbol) ?? []);
  return { dimension, spellings: spellings.split(' '), candidates };
}
