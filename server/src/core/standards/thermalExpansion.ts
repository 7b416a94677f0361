import type { Bounds } from '../quantity';
import { type CalculationStep, step } from './calculation';
import { arePositive, given, withoutNoise } from './working';

/**
 * A part with a bore that is to go onto a shaft at a temperature at which it slides. Lengths in millimetres,
 * temperatures in degrees Celsius, coefficients of linear expansion per kelvin (23 · 10⁻⁶/K is 23e-6). Bounds hold at
 * `ambient`.
 */
export interface ShrinkFit {
  readonly bore: Bounds;
  readonly shaft: Bounds;
  /** Clearance on the diameter wanted while it slides on; not below zero. */
  readonly clearance: number;
  readonly ambient: number;
}

/** The temperature that one of the parts needs, with the working. */
export interface FittingTemperature {
  /** Largest interference on the diameter in millimetres; negative where the parts go together cold. */
  readonly interference: number;
  /**
   * Kelvins by which the part has to be warmer (or, when it is cooled, colder) than the surroundings; 0 if it slides
   * anyway.
   */
  readonly change: number;
  /** Degrees Celsius. */
  readonly temperature: number;
  readonly steps: readonly CalculationStep[];
}

const absoluteZero = -273.15;

/**
 * The temperature that the outer part has to be heated to: ΔT = (δ + c)/(α·d), with the tightest case of the
 * tolerances, the largest shaft in the smallest bore (the formula of every textbook on interference fits).
 * @returns undefined where a bound is open, the coefficient is not above zero or the clearance is below zero
 */
export function heatingToFit(fit: ShrinkFit, boreExpansion: number): FittingTemperature | undefined {
  const [bore, shaft] = [fit.bore.lowest, fit.shaft.highest];
  if (!isUsable(fit) || !arePositive(boreExpansion)) return undefined;
  const interference = withoutNoise(shaft - bore);
  const change = Math.max(0, (interference + fit.clearance) / (boreExpansion * bore));
  const temperature = fit.ambient + change;
  const steps = [
    ...tightest(fit, interference),
    given('α', 'expansion of the outer part', boreExpansion * 1e6, '10⁻⁶/K'),
    step('ΔT', 'rise of temperature', '(δ + c)/(α·d)', change, 'K'),
    step('t', 'temperature of the outer part', 't_a + ΔT', temperature, '°C'),
  ];
  return { interference, change, temperature, steps };
}

/**
 * The temperature that the shaft has to be cooled to where the outer part stays as it is: ΔT = (δ + c)/(α·d), with
 * the tightest case.
 * @returns undefined as above, and where it would be colder than anything can be
 */
export function coolingToFit(fit: ShrinkFit, shaftExpansion: number): FittingTemperature | undefined {
  const [bore, shaft] = [fit.bore.lowest, fit.shaft.highest];
  if (!isUsable(fit) || !arePositive(shaftExpansion)) return undefined;
  const interference = withoutNoise(shaft - bore);
  const change = Math.max(0, (interference + fit.clearance) / (shaftExpansion * shaft));
  const temperature = fit.ambient - change;
  if (temperature < absoluteZero) return undefined;
  const steps = [
    ...tightest(fit, interference),
    given('α_s', 'expansion of the shaft', shaftExpansion * 1e6, '10⁻⁶/K'),
    step('ΔT', 'fall of temperature', '(δ + c)/(α_s·d_s)', change, 'K'),
    step('t_s', 'temperature of the shaft', 't_a − ΔT', temperature, '°C'),
  ];
  return { interference, change, temperature, steps };
}

/**
 * The temperature of the outer part where the shaft is cooled as well: what is left of δ + c once the shaft has
 * shrunk by α·d·ΔT has to come from the outer part.
 * @param shaftTemperature degrees Celsius, not above the surroundings
 */
export function heatingOntoCooledShaft(
  fit: ShrinkFit,
  boreExpansion: number,
  shaftExpansion: number,
  shaftTemperature: number,
): FittingTemperature | undefined {
  if (!isUsable(fit) || !arePositive(shaftExpansion) || !(shaftTemperature >= absoluteZero)) return undefined;
  if (shaftTemperature > fit.ambient) return undefined;
  const shrinks = shaftExpansion * fit.shaft.highest * (fit.ambient - shaftTemperature);
  const cold = { ...fit.shaft, highest: fit.shaft.highest - shrinks };
  const heated = heatingToFit({ ...fit, shaft: cold }, boreExpansion);
  if (heated === undefined) return undefined;
  const steps = [
    given('d_0', 'largest shaft at the surroundings', fit.shaft.highest, 'mm'),
    given('α_s', 'expansion of the shaft', shaftExpansion * 1e6, '10⁻⁶/K'),
    given('t_s', 'temperature of the shaft', shaftTemperature, '°C'),
    step('Δd', 'the shaft shrinks by', 'α_s·d_0·(t_a − t_s)', shrinks, 'mm'),
    ...heated.steps,
  ];
  return { ...heated, steps };
}

/**
 * Clearance on the diameter in millimetres, tightest case, with the outer part at a temperature in degrees Celsius
 * and the shaft left at the surroundings.
 */
export function clearanceWhenHot(fit: ShrinkFit, boreExpansion: number, temperature: number): number | undefined {
  if (!isUsable(fit) || !arePositive(boreExpansion) || !Number.isFinite(temperature)) return undefined;
  return withoutNoise(fit.bore.lowest * (1 + boreExpansion * (temperature - fit.ambient)) - fit.shaft.highest);
}

function isUsable({ bore, shaft, clearance, ambient }: ShrinkFit): boolean {
  return (
    arePositive(bore.lowest, shaft.highest) && Number.isFinite(ambient) && Number.isFinite(clearance) && clearance >= 0
  );
}

function tightest(fit: ShrinkFit, interference: number): readonly CalculationStep[] {
  return [
    given('d', 'smallest bore', fit.bore.lowest, 'mm'),
    given('d_s', 'largest shaft', fit.shaft.highest, 'mm'),
    step('δ', 'largest interference', 'd_s − d', interference, 'mm'),
    given('c', 'clearance wanted', fit.clearance, 'mm'),
    given('t_a', 'temperature of the surroundings', fit.ambient, '°C'),
  ];
}
