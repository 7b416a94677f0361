import { type CalculationStep, step } from './calculation';
import { arePositive, given } from './working';

/**
 * Classes of hand torque tools of ISO 6789: type I indicates the torque, type II is set to it beforehand. `above10`
 * is the permissible deviation in per cent of a tool whose highest torque is above 10 N·m, `upTo10` of the others.
 */
export interface TorqueToolClass {
  readonly type: 'I' | 'II';
  readonly letter: string;
  readonly description: string;
  readonly upTo10: number;
  readonly above10: number;
}

function toolClass(type: 'I' | 'II', letter: string, description: string, above10: 4 | 6): TorqueToolClass {
  return { type, letter, description, upTo10: 6, above10 };
}

/**
 * The classes with their permissible deviations. Class II A: ISO 6789 as a maker of torque tools quotes it in an
 * instruction for checking; all others: from memory.
 */
export const torqueToolClasses: readonly TorqueToolClass[] = [
  toolClass('I', 'A', 'wrench with torsion or flexion bar', 6),
  toolClass('I', 'B', 'wrench with rigid housing and scale or dial', 4),
  toolClass('I', 'C', 'wrench with electronic measurement', 4),
  toolClass('I', 'D', 'screwdriver with scale or dial', 6),
  toolClass('I', 'E', 'screwdriver with electronic measurement', 6),
  toolClass('II', 'A', 'adjustable wrench with scale', 4),
  toolClass('II', 'B', 'wrench with fixed adjustment', 4),
  toolClass('II', 'C', 'adjustable wrench without scale', 4),
  toolClass('II', 'D', 'adjustable screwdriver with scale', 6),
  toolClass('II', 'E', 'screwdriver with fixed adjustment', 6),
  toolClass('II', 'F', 'adjustable screwdriver without scale', 6),
  toolClass('II', 'G', 'adjustable wrench with flexion bar', 6),
];

/**
 * Recalibration by ISO 6789, where the workshop has no procedure of its own: whichever comes first, and at once after
 * an overload.
 */
export const calibrationInterval = { months: 12, operations: 5000, overloadPercent: 25 } as const;

/** Lowest and highest torque in newton metres, with the working. */
export interface TorqueRange {
  readonly lowest: number;
  readonly highest: number;
  readonly steps: readonly CalculationStep[];
}

/** What a wrench with an extension has to be set to, in newton metres. */
export interface ExtensionSetting {
  readonly setting: number;
  readonly steps: readonly CalculationStep[];
}

/** The class of a type and a letter, for example II A. */
export function findToolClass(type: 'I' | 'II', letter: string): TorqueToolClass | undefined {
  return torqueToolClasses.find((candidate) => candidate.type === type && candidate.letter === letter);
}

/**
 * The permissible deviation of a tool in per cent of the torque; `highest` is the tool's highest torque in newton
 * metres.
 */
export function permissibleDeviation(tool: TorqueToolClass, highest: number): number {
  return highest > 10 ? tool.above10 : tool.upTo10;
}

/**
 * The part of a tool's range in which its deviation is warranted, in newton metres: from a fifth of its highest
 * torque (ISO 6789:2003 tests at 20, 60 and 100 %), yet not below the lowest marked torque, where ISO 6789-1:2017
 * lets the range begin.
 * @returns undefined unless 0 ≤ lowest marked < highest
 */
export function usableRange(lowestMarked: number, highest: number): TorqueRange | undefined {
  if (!arePositive(highest) || !(lowestMarked >= 0 && lowestMarked < highest)) return undefined;
  const fifth = 0.2 * highest;
  const lowest = Math.max(fifth, lowestMarked);
  const steps = [
    given('M_mark', 'lowest marked torque', lowestMarked, 'N·m'),
    given('M_max', 'highest torque', highest, 'N·m'),
    step('M_20', 'a fifth of the highest torque', '0.2·M_max (ISO 6789:2003)', fifth, 'N·m'),
    step('M_min', 'usable from', 'the greater of M_mark and M_20', lowest, 'N·m'),
  ];
  return { lowest, highest, steps };
}

/**
 * What a tool set to a torque in newton metres may give, with its deviation in per cent; undefined for values that
 * are not above zero.
 */
export function torqueGiven(setting: number, deviation: number): TorqueRange | undefined {
  if (!arePositive(setting, deviation)) return undefined;
  const amount = (setting * deviation) / 100;
  const steps = [
    given('M_set', 'setting', setting, 'N·m'),
    given('A', 'permissible deviation', deviation, '%'),
    step('ΔM', 'deviation', 'M_set·A/100', amount, 'N·m'),
  ];
  return { lowest: setting - amount, highest: setting + amount, steps };
}

/**
 * The setting of a wrench with a crow-foot or another extension: M_set = M·L/(L + E·cos θ) (FAA AC 43.13-1B, figure
 * 7-2, and United States Army TM 9-254 for the straight case).
 * @param torque wanted at the fastener, newton metres
 * @param lever L, from the square drive to the middle of the grip, millimetres
 * @param extension E, from the square drive to the fastener, millimetres; never negative
 * @param angle θ in degrees: 0 straight on, which needs a lower setting; 90 square to the wrench, which needs none;
 * 180 back towards the grip, which needs a higher one
 * @returns undefined where lever or torque are not above zero or the fastener comes to lie at the grip
 */
export function settingWithExtension(
  torque: number,
  lever: number,
  extension: number,
  angle = 0,
): ExtensionSetting | undefined {
  // Exact at a right angle, where the cosine in binary is not quite zero.
  const cosine = angle % 180 === 90 || angle % 180 === -90 ? 0 : Math.cos((angle * Math.PI) / 180);
  const effective = lever + extension * cosine;
  if (!arePositive(torque, lever, effective) || extension < 0) return undefined;
  const setting = (torque * lever) / effective;
  const steps = [
    given('M', 'torque at the fastener', torque, 'N·m'),
    given('L', 'lever of the wrench', lever, 'mm'),
    given('E', 'extension', extension, 'mm'),
    given('θ', 'angle', angle, '°'),
    step('L_eff', 'effective lever', 'L + E·cos θ', effective, 'mm'),
    step('M_set', 'setting', 'M·L/(L + E·cos θ)', setting, 'N·m'),
  ];
  return { setting, steps };
}
