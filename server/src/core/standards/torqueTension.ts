import { type BearingFace, meanBearingDiameter } from './bearingFaces';
import { type CalculationStep, step, type Worked, worked } from './calculation';
import type { Strength } from './propertyClasses';
import { pitchDiameter, stressArea, stressAreaSteps, stressDiameter, type ThreadSize } from './threadGeometry';

/** What turns a torque into a preload: thread, face, and the coefficients of friction in the thread and under the face. */
export interface Tightening {
  readonly thread: ThreadSize;
  readonly face: BearingFace;
  readonly threadFriction: number;
  readonly faceFriction: number;
}

/**
 * Torque in N·m for a preload in N by the long form M_A = F·(0.16·P + 0.58·d2·µ_G + D_Km/2·µ_K) (VDI 2230, ISO 16047).
 * The three terms are the lift of the thread, the friction in it and the friction under the face.
 */
export function torqueForPreload(preload: number, tightening: Tightening): Worked {
  const torque = (preload * leverOf(tightening)) / 1000;
  const before = [...geometrySteps(tightening), step('F', 'preload', 'given', preload, 'N')];
  return worked(before, torqueStep(torque));
}

/** Preload in N for a torque in N·m: the long form the other way round. */
export function preloadForTorque(torque: number, tightening: Tightening): Worked {
  const preload = (torque * 1000) / leverOf(tightening);
  const before = [...geometrySteps(tightening), step('M_A', 'tightening torque', 'given', torque, 'N·m')];
  return worked(before, step('F', 'preload', 'M_A/(0.16·P + 0.58·d2·µ_G + D_Km/2·µ_K)', preload, 'N'));
}

/**
 * Preload in N at which the stress of tension and torsion together reaches the share ν of the yield stress:
 * F = A_s·ν·R_p0.2/√(1 + 3·(1.5·d2/d_s·(P/(π·d2) + 1.155·µ_G))²) (VDI 2230).
 * @param utilisation the share ν, usually 0.9
 */
export function preloadAtUtilisation(strength: Strength, utilisation: number, tightening: Tightening): Worked {
  const { thread } = tightening;
  const preload = (stressArea(thread) * utilisation * strength.yield) / torsionFactor(tightening);
  const before = [
    ...stressAreaSteps(thread),
    step('R_p0.2', 'yield stress', strength.standard, strength.yield, 'MPa'),
    step('ν', 'share of the yield stress', 'given', utilisation, ''),
    step('d2', 'pitch diameter', 'd − 0.6495·P', pitchDiameter(thread), 'mm'),
    step('d_s', 'diameter of the stress area', '√(4·A_s/π)', stressDiameter(thread), 'mm'),
    step('µ_G', 'friction in the thread', 'given', tightening.threadFriction, ''),
  ];
  const formula = 'A_s·ν·R_p0.2/√(1 + 3·(1.5·d2/d_s·(P/(π·d2) + 1.155·µ_G))²)';
  return worked(before, step('F', 'preload', formula, preload, 'N'));
}

/** Torque in N·m at which the bolt is used to the share ν of its yield stress. */
export function torqueAtUtilisation(strength: Strength, utilisation: number, tightening: Tightening): Worked {
  return continued(preloadAtUtilisation(strength, utilisation, tightening), tightening);
}

/** Torque in N·m at which the preload alone reaches the proof load S_p·A_s or the breaking load R_m·A_s. */
export function torqueReaching(limit: 'proof' | 'tensile', strength: Strength, tightening: Tightening): Worked {
  const symbol = limit === 'tensile' ? 'R_m' : strength.proofFrom === 'yield' ? 'R_p0.2' : 'S_p';
  const name = limit === 'tensile' ? 'tensile strength' : symbol === 'S_p' ? 'proof stress' : 'yield stress';
  const before = [...stressAreaSteps(tightening.thread), step(symbol, name, strength.standard, strength[limit], 'MPa')];
  const load = strength[limit] * stressArea(tightening.thread);
  return continued(worked(before, step('F', 'preload', `${symbol}·A_s`, load, 'N')), tightening);
}

/** How far a torque uses a bolt: shares of 1. */
export interface Utilisation {
  /** Preload against proof load. */
  readonly ofProofLoad: number;
  /** Stress of tension and torsion together against yield stress. */
  readonly ofYield: number;
  readonly steps: readonly CalculationStep[];
}

/** How far a torque in N·m uses a bolt of this strength. */
export function utilisationAt(torque: number, strength: Strength, tightening: Tightening): Utilisation {
  const preload = preloadForTorque(torque, tightening);
  const area = stressArea(tightening.thread);
  const ofProofLoad = preload.value / (strength.proof * area);
  const ofYield = (preload.value * torsionFactor(tightening)) / (strength.yield * area);
  const steps = [
    ...preload.steps,
    step('A_s', 'stress area', 'π/4·d_s²', area, 'mm²'),
    step('F/F_p', 'share of the proof load', 'F/(S_p·A_s)', ofProofLoad, ''),
    step('ν', 'share of the yield stress', 'F·√(1 + 3·(τ/σ)²)/(A_s·R_p0.2)', ofYield, ''),
  ];
  return { ofProofLoad, ofYield, steps };
}

/** The nut factor K = M_A/(F·d) that the short form would have for this tightening. */
export function nutFactorOf(tightening: Tightening): number {
  return leverOf(tightening) / tightening.thread.diameter;
}

/** Torque in N·m by the short form T = K·F·d; preload in N, diameter in mm. */
export function shortFormTorque(nutFactor: number, preload: number, diameter: number): Worked {
  const torque = (nutFactor * preload * diameter) / 1000;
  const before = [
    step('K', 'nut factor', 'given', nutFactor, ''),
    step('F', 'preload', 'given', preload, 'N'),
    step('d', 'nominal diameter', 'given', diameter, 'mm'),
  ];
  return worked(before, step('T', 'tightening torque', 'K·F·d', torque, 'N·m'));
}

/** Preload in N by the short form F = T/(K·d); torque in N·m, diameter in mm. */
export function shortFormPreload(nutFactor: number, torque: number, diameter: number): Worked {
  const preload = (torque * 1000) / (nutFactor * diameter);
  const before = [
    step('K', 'nut factor', 'given', nutFactor, ''),
    step('T', 'tightening torque', 'given', torque, 'N·m'),
    step('d', 'nominal diameter', 'given', diameter, 'mm'),
  ];
  return worked(before, step('F', 'preload', 'T/(K·d)', preload, 'N'));
}

/** Millimetres of lever between preload and torque. */
function leverOf({ thread, face, threadFriction, faceFriction }: Tightening): number {
  const lift = 0.16 * thread.pitch;
  const inThread = 0.58 * pitchDiameter(thread) * threadFriction;
  const underFace = (meanBearingDiameter(face) / 2) * faceFriction;
  return lift + inThread + underFace;
}

/** By how much torsion raises the stress of tension alone (distortion energy), for the torque that stays in the thread. */
function torsionFactor({ thread, threadFriction }: Tightening): number {
  const d2 = pitchDiameter(thread);
  const ratio = 1.5 * (d2 / stressDiameter(thread)) * (thread.pitch / (Math.PI * d2) + 1.155 * threadFriction);
  return Math.sqrt(1 + 3 * ratio ** 2);
}

function continued(preload: Worked, tightening: Tightening): Worked {
  const known = new Set(preload.steps.map(({ symbol }) => symbol));
  const more = geometrySteps(tightening).filter(({ symbol }) => !known.has(symbol));
  return worked([...preload.steps, ...more], torqueStep((preload.value * leverOf(tightening)) / 1000));
}

function torqueStep(torque: number): CalculationStep {
  return step('M_A', 'tightening torque', 'F·(0.16·P + 0.58·d2·µ_G + D_Km/2·µ_K)', torque, 'N·m');
}

function geometrySteps({ thread, face, threadFriction, faceFriction }: Tightening): readonly CalculationStep[] {
  return [
    step('d', 'nominal diameter', 'given', thread.diameter, 'mm'),
    step('P', 'pitch', 'given', thread.pitch, 'mm'),
    step('d2', 'pitch diameter', 'd − 0.6495·P', pitchDiameter(thread), 'mm'),
    step('d_w', 'face', 'given', face.outer, 'mm'),
    step('d_h', 'hole', 'given', face.inner, 'mm'),
    step('D_Km', 'mean bearing diameter', '(d_w + d_h)/2', meanBearingDiameter(face), 'mm'),
    step('µ_G', 'friction in the thread', 'given', threadFriction, ''),
    step('µ_K', 'friction under the face', 'given', faceFriction, ''),
  ];
}
