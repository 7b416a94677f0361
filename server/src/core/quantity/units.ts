import { type Dimension, dimensionFacts } from './dimension';
import type { Unit } from './unit';
import { currentUnits, ratioUnits, resistanceUnits, voltageUnits } from './units/electrical';
import { forceUnits, massUnits, unbalanceUnits } from './units/forceAndMass';
import { angleUnits, lengthUnits, volumeUnits } from './units/geometry';
import { flowUnits, pressureUnits, temperatureDifferenceUnits, temperatureUnits } from './units/heatAndFluids';
import { rotationalSpeedUnits, speedUnits, timeUnits } from './units/motion';
import { torqueUnits } from './units/torque';

const byDimension: Readonly<Record<Dimension, readonly Unit[]>> = {
  torque: torqueUnits,
  force: forceUnits,
  length: lengthUnits,
  angle: angleUnits,
  temperature: temperatureUnits,
  'temperature-difference': temperatureDifferenceUnits,
  pressure: pressureUnits,
  mass: massUnits,
  unbalance: unbalanceUnits,
  time: timeUnits,
  'rotational-speed': rotationalSpeedUnits,
  speed: speedUnits,
  volume: volumeUnits,
  flow: flowUnits,
  voltage: voltageUnits,
  current: currentUnits,
  resistance: resistanceUnits,
  ratio: ratioUnits,
};

/** Every unit of a dimension. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return byDimension[dimension];
}

/** Every unit there is. */
export const allUnits: readonly Unit[] = Object.values(byDimension).flat();

/** The unit of a dimension with exactly this standard symbol. */
export function findUnit(dimension: Dimension, symbol: string): Unit | undefined {
  return byDimension[dimension].find((unit) => unit.symbol === symbol);
}

/** The units a workshop writes for a dimension, most usual first. */
export function usualUnits(dimension: Dimension): readonly Unit[] {
  return dimensionFacts[dimension].usual.flatMap((symbol) => findUnit(dimension, symbol) ?? []);
}

/** The unit that a tolerance of a value in `unit` is in; the same but for temperatures. */
export function differenceUnit(unit: Unit): Unit {
  return unit.dimension === 'temperature' ? (findUnit('temperature-difference', unit.symbol) ?? unit) : unit;
}
