/** What a quantity measures. A torque and an unbalance have the same SI base dimensions or letters and still never mix. */
export type Dimension =
  | 'torque'
  | 'force'
  | 'length'
  | 'angle'
  | 'temperature'
  | 'temperature-difference'
  | 'pressure'
  | 'mass'
  | 'unbalance'
  | 'time'
  | 'rotational-speed'
  | 'speed'
  | 'volume'
  | 'flow'
  | 'voltage'
  | 'current'
  | 'resistance'
  | 'ratio';

interface DimensionFacts {
  /** Symbol of the unit that base values are given in. */
  readonly base: string;
  /** Symbols to offer where a unit is missing, most usual first. */
  readonly usual: readonly string[];
}

/**
 * The base unit of each dimension, and what a workshop writes. The base is the unit the trade calculates in, not always
 * the SI coherent one: limits are thought of in millimetres, residual unbalance in gram millimetres.
 */
export const dimensionFacts: Readonly<Record<Dimension, DimensionFacts>> = {
  torque: { base: 'N·m', usual: ['N·m', 'lbf·ft', 'lbf·in'] },
  force: { base: 'N', usual: ['N', 'kN', 'lbf'] },
  length: { base: 'mm', usual: ['mm', 'in', 'µm'] },
  angle: { base: '°', usual: ['°', 'rev'] },
  temperature: { base: '°C', usual: ['°C', '°F'] },
  'temperature-difference': { base: 'K', usual: ['K', '°C', '°F'] },
  pressure: { base: 'Pa', usual: ['bar', 'kPa', 'psi'] },
  mass: { base: 'kg', usual: ['g', 'kg', 'lb'] },
  unbalance: { base: 'g·mm', usual: ['g·mm', 'oz·in'] },
  time: { base: 's', usual: ['min', 's', 'h'] },
  'rotational-speed': { base: 'min⁻¹', usual: ['rpm', 'min⁻¹'] },
  speed: { base: 'm/s', usual: ['m/s', 'mm/s', 'ft/s'] },
  volume: { base: 'mL', usual: ['mL', 'L', 'fl oz'] },
  flow: { base: 'L/min', usual: ['L/min', 'm³/h', 'ft³/min'] },
  voltage: { base: 'V', usual: ['V', 'mV'] },
  current: { base: 'A', usual: ['mA', 'A'] },
  resistance: { base: 'Ω', usual: ['Ω', 'kΩ'] },
  ratio: { base: '%', usual: ['%'] },
};

/** Every dimension, torque first. */
export const dimensions = Object.keys(dimensionFacts) as readonly Dimension[];

/** The dimension of the difference of two values: a tolerance of a temperature is a temperature difference. */
export function differenceOf(dimension: Dimension): Dimension {
  return dimension === 'temperature' ? 'temperature-difference' : dimension;
}
