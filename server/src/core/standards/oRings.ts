import type { Bounds } from '../quantity';
import { type CalculationStep, step } from './calculation';
import { arePositive, given, withoutNoise } from './working';

/**
 * How far an O-ring is pressed in its groove: millimetres, and per cent of its own section, at the worst of both
 * tolerances.
 */
export interface Squeeze {
  /** Thinnest ring in the deepest groove; negative where they do not touch. */
  readonly least: number;
  readonly leastPercent: number;
  /** Thickest ring in the shallowest groove. */
  readonly greatest: number;
  readonly greatestPercent: number;
  readonly steps: readonly CalculationStep[];
}

/** A share in per cent, from the most favourable to the least. */
export interface PercentRange {
  readonly least: number;
  readonly greatest: number;
  readonly steps: readonly CalculationStep[];
}

/**
 * Squeeze in per cent of the section that a maker's published guide to seal design recommends: 10 to 40 where nothing
 * moves, at most 30 where it moves. It names no least value for motion, so that zero stands there: below it the ring
 * does not touch.
 */
export const recommendedSqueeze = {
  static: { least: 10, greatest: 40 },
  dynamic: { least: 0, greatest: 30 },
} as const;

/** Stretch in the groove, in per cent of the inside diameter, by the same guide; while it is fitted it may be 100. */
export const greatestStretch = { inPlace: 5, whileFitting: 100 } as const;

/**
 * Share of the groove in per cent that the ring may fill, so that it has room to swell and to expand (published
 * O-ring guides).
 */
export const greatestFill = 85;

/**
 * Squeeze of a ring in a groove: section − depth, as a share of the section. The depth is from the floor of the
 * groove to the face that the ring seals against, so that the gap counts. Bounds in millimetres. That a stretched
 * ring gets thinner is not reckoned in.
 * @returns undefined where a bound is open or not above zero
 */
export function squeezeOf(section: Bounds, depth: Bounds): Squeeze | undefined {
  if (!arePositive(section.lowest, section.highest, depth.lowest, depth.highest)) return undefined;
  const least = withoutNoise(section.lowest - depth.highest);
  const greatest = withoutNoise(section.highest - depth.lowest);
  const [leastPercent, greatestPercent] = [(100 * least) / section.lowest, (100 * greatest) / section.highest];
  const steps = [
    given('w_min', 'smallest section', section.lowest, 'mm'),
    given('w_max', 'largest section', section.highest, 'mm'),
    given('h_min', 'least depth of the groove', depth.lowest, 'mm'),
    given('h_max', 'greatest depth of the groove', depth.highest, 'mm'),
    step('s_min', 'least squeeze', 'w_min − h_max', least, 'mm'),
    step('S_min', 'least squeeze of the section', 's_min/w_min', leastPercent, '%'),
    step('s_max', 'greatest squeeze', 'w_max − h_min', greatest, 'mm'),
    step('S_max', 'greatest squeeze of the section', 's_max/w_max', greatestPercent, '%'),
  ];
  return { least, leastPercent, greatest, greatestPercent, steps };
}

/**
 * Stretch of a ring that lies in a groove on a shaft: (groove diameter − inside diameter)/inside diameter; negative
 * where the ring is larger than the groove's floor. Bounds in millimetres.
 * @returns undefined where a bound is open or not above zero
 */
export function stretchOf(insideDiameter: Bounds, grooveDiameter: Bounds): PercentRange | undefined {
  const { lowest, highest } = insideDiameter;
  if (!arePositive(lowest, highest, grooveDiameter.lowest, grooveDiameter.highest)) return undefined;
  const least = (100 * (grooveDiameter.lowest - highest)) / highest;
  const greatest = (100 * (grooveDiameter.highest - lowest)) / lowest;
  const steps = [
    given('d_min', 'smallest inside diameter', lowest, 'mm'),
    given('d_max', 'largest inside diameter', highest, 'mm'),
    given('g_min', 'smallest groove diameter', grooveDiameter.lowest, 'mm'),
    given('g_max', 'largest groove diameter', grooveDiameter.highest, 'mm'),
    step('e_min', 'least stretch', '(g_min − d_max)/d_max', least, '%'),
    step('e_max', 'greatest stretch', '(g_max − d_min)/d_min', greatest, '%'),
  ];
  return { least, greatest, steps };
}

/**
 * Share of the groove that the ring fills: section area over depth times width. Bounds in millimetres; rounded
 * corners and stretch are not reckoned in.
 * @returns undefined where a bound is open or not above zero
 */
export function fillOf(section: Bounds, depth: Bounds, width: Bounds): PercentRange | undefined {
  const bounds = [section, depth, width].flatMap(({ lowest, highest }) => [lowest, highest]);
  if (!arePositive(...bounds)) return undefined;
  const least = (100 * areaOf(section.lowest)) / (depth.highest * width.highest);
  const greatest = (100 * areaOf(section.highest)) / (depth.lowest * width.lowest);
  const steps = [
    given('w_max', 'largest section', section.highest, 'mm'),
    given('h_min', 'least depth', depth.lowest, 'mm'),
    given('b_min', 'least width', width.lowest, 'mm'),
    step('A_max', 'largest ring area', 'π/4·w_max²', areaOf(section.highest), 'mm²'),
    step('f_min', 'least fill', 'π/4·w_min²/(h_max·b_max)', least, '%'),
    step('f_max', 'greatest fill', 'A_max/(h_min·b_min)', greatest, '%'),
  ];
  return { least, greatest, steps };
}

function areaOf(diameter: number): number {
  return (Math.PI / 4) * diameter * diameter;
}
