import { type CalculationStep, step } from './calculation';

/** A parallel 60° screw thread with one start; diameter (the nominal, major one) and pitch in mm. */
export interface ThreadSize {
  readonly system: 'metric' | 'unified';
  readonly diameter: number;
  readonly pitch: number;
}

/**
 * The basic profile of both systems is the same triangle of height H = √3/2·P (ISO 68-1, ASME B1.1), cut off at H/8 outside;
 * the pitch diameter lies 3/8·H below the crest on each side.
 */
const profileHeight = Math.sqrt(3) / 2;

/** Pitch diameter d2 in mm: d − 0.649 519·P (ISO 724, ASME B1.1). */
export function pitchDiameter({ diameter, pitch }: ThreadSize): number {
  return diameter - 0.75 * profileHeight * pitch;
}

/**
 * Minor diameter of the external thread d3 in mm: metric d − 1.226 869·P (17/12 of H, ISO 898-1), unified d − 1.190 785·P
 * (11/8 of H, the rounded root of ASME B1.1).
 */
export function minorDiameter({ system, diameter, pitch }: ThreadSize): number {
  const depth = system === 'metric' ? 17 / 12 : 11 / 8;
  return diameter - depth * profileHeight * pitch;
}

/** Minor diameter of the internal thread D1 in mm: d − 1.082 532·P (ISO 724, ASME B1.1). */
export function nutMinorDiameter({ diameter, pitch }: ThreadSize): number {
  return diameter - 1.25 * profileHeight * pitch;
}

/**
 * Diameter of the circle that carries the load, in mm: metric (d2 + d3)/2 = d − 0.938 194·P (ISO 898-1), unified
 * d − 0.974 3·P (ASME B1.1).
 */
export function stressDiameter(thread: ThreadSize): number {
  return thread.system === 'metric'
    ? (pitchDiameter(thread) + minorDiameter(thread)) / 2
    : thread.diameter - 0.9743 * thread.pitch;
}

/** Stress area A_s in mm². */
export function stressArea(thread: ThreadSize): number {
  return (Math.PI / 4) * stressDiameter(thread) ** 2;
}

/** Lead angle at the pitch diameter, in degrees. */
export function leadAngle(thread: ThreadSize): number {
  return (Math.atan(thread.pitch / (Math.PI * pitchDiameter(thread))) * 180) / Math.PI;
}

/** How far the thread moves along its axis when it is turned, in mm: P·angle/360; the angle in degrees. */
export function advanceOf({ pitch }: ThreadSize, angle: number): number {
  return (pitch * angle) / 360;
}

/** The stress area as steps of a calculation. */
export function stressAreaSteps(thread: ThreadSize): readonly CalculationStep[] {
  const factor = thread.system === 'metric' ? '0.9382' : '0.9743';
  return [
    step('d', 'nominal diameter', 'given', thread.diameter, 'mm'),
    step('P', 'pitch', 'given', thread.pitch, 'mm'),
    step('A_s', 'stress area', `π/4·(d − ${factor}·P)²`, stressArea(thread), 'mm²'),
  ];
}
