import { type CalculationStep, step } from './calculation';
import { arePositive, given } from './working';

/**
 * Balance quality grades G of ISO 21940-11:2016, table 1, in millimetres per second; a grade is the product of the
 * permissible specific unbalance and the angular velocity at service speed. Neighbours are about 2.5 apart.
 */
export const balanceGrades: readonly number[] = [0.4, 1, 2.5, 6.3, 16, 40, 100, 250, 630, 1600, 4000];

/**
 * Machines that ISO 21940-11:2016, table 1, names beside a grade, as far as they matter here. It is general guidance:
 * the grade to use is what the maker of the rotor states.
 */
export const gradeExamples: ReadonlyMap<number, string> = new Map([
  [0.4, 'gyroscopes, spindles of high-precision systems'],
  [1, 'drives of grinding machines'],
  [2.5, 'gas and steam turbines, compressors'],
  [6.3, 'turbochargers, fans, pumps, aircraft gas turbines'],
]);

/** The permissible residual unbalance of a rotor. */
export interface PermissibleUnbalance {
  /** Gram millimetres, for the whole rotor. */
  readonly unbalance: number;
  /** Gram millimetres per kilogram, which is the eccentricity of the centre of mass in micrometres. */
  readonly specific: number;
  readonly steps: readonly CalculationStep[];
}

/** What each of two tolerance planes may keep, in gram millimetres. */
export interface UnbalanceOfPlanes {
  readonly planeA: number;
  readonly planeB: number;
  readonly steps: readonly CalculationStep[];
}

const source = 'ISO 21940-11:2016';

/** Reads `G 6.3`, `G6.3` or `6.3`; undefined where it is no grade of the standard. */
export function readBalanceGrade(text: string): number | undefined {
  const written = /^\s*(?:G\s*)?(\d+(?:\.\d+)?)\s*$/.exec(text)?.[1];
  return balanceGrades.find((grade) => grade === Number(written));
}

/**
 * Permissible residual unbalance by ISO 21940-11:2016: e = G/Ω and U = e·m.
 * @param grade millimetres per second, any number above zero
 * @param mass of the rotor in kilograms
 * @param speed highest service speed in revolutions per minute
 * @returns undefined unless all three are finite and above zero
 */
export function permissibleUnbalance(grade: number, mass: number, speed: number): PermissibleUnbalance | undefined {
  if (!arePositive(grade, mass, speed)) return undefined;
  const angular = (2 * Math.PI * speed) / 60;
  const specific = (1000 * grade) / angular;
  const unbalance = specific * mass;
  const steps = [
    step('G', 'balance quality grade', source, grade, 'mm/s'),
    given('m', 'rotor mass', mass, 'kg'),
    given('n', 'service speed', speed, 'min⁻¹'),
    step('Ω', 'angular velocity', '2π·n/60', angular, 'rad/s'),
    step('e', 'specific unbalance', '1000·G/Ω', specific, 'g·mm/kg'),
    step('U', 'permissible residual unbalance', 'e·m', unbalance, 'g·mm'),
  ];
  return { unbalance, specific, steps };
}

/** The grade that an unbalance in gram millimetres amounts to, in millimetres per second: G = U·Ω/(1000·m). */
export function gradeReached(unbalance: number, mass: number, speed: number): number | undefined {
  if (!arePositive(mass, speed) || !(unbalance >= 0 && Number.isFinite(unbalance))) return undefined;
  return (unbalance * 2 * Math.PI * speed) / 60 / 1000 / mass;
}

/**
 * Splits a permissible unbalance in gram millimetres between the bearing planes in proportion to the load they carry,
 * so that the nearer plane gets more; a share is kept between 30 % and 70 % (ISO 21940-11:2016, inboard rotors;
 * read in a secondary copy).
 * @param toPlaneA distance of the centre of mass from plane A in millimetres, between the planes
 * @param toPlaneB the same from plane B; half each where both are alike
 * @returns undefined for a centre of mass that does not lie between the planes
 */
export function splitBetweenPlanes(
  unbalance: number,
  toPlaneA: number,
  toPlaneB: number,
): UnbalanceOfPlanes | undefined {
  if (!arePositive(unbalance, toPlaneA, toPlaneB)) return undefined;
  const byLoad = toPlaneB / (toPlaneA + toPlaneB);
  const shareOfA = Math.min(0.7, Math.max(0.3, byLoad));
  const [planeA, planeB] = [unbalance * shareOfA, unbalance * (1 - shareOfA)];
  const steps = [
    given('U', 'permissible residual unbalance', unbalance, 'g·mm'),
    given('L_A', 'centre of mass to plane A', toPlaneA, 'mm'),
    given('L_B', 'centre of mass to plane B', toPlaneB, 'mm'),
    step('s', 'share of plane A', 'L_B/(L_A + L_B), from 0.3 to 0.7', shareOfA, ''),
    step('U_A', 'plane A', 's·U', planeA, 'g·mm'),
    step('U_B', 'plane B', 'U − U_A', planeB, 'g·mm'),
  ];
  return { planeA, planeB, steps };
}
