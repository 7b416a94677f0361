import type { BearingFace } from './bearingFaces';
import { type CalculationStep, step } from './calculation';
import { formatPropertyClass, type PropertyClass, type Strength, strengthOf } from './propertyClasses';
import { type IsoBoltClass, strongestSteelClass, weakestSteelClass } from './strengthTables';
import type { ThreadSize } from './threadGeometry';
import { type Tightening, torqueAtUtilisation, torqueReaching } from './torqueTension';

/** Bolt or nut of a joint with its class, as far as one is known. */
export interface JointPart {
  readonly role: 'bolt' | 'nut';
  readonly propertyClass: PropertyClass;
}

/** What is known of the friction: nothing, or what the maker states, as a coefficient. */
export type FrictionStatement =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'stated'; readonly thread: number; readonly face: number };

/** A screwed joint as far as a torque needs it. */
export interface Joint {
  readonly thread: ThreadSize;
  readonly face: BearingFace;
  readonly parts: readonly JointPart[];
  readonly friction: FrictionStatement;
}

/** One end of a band: the torque in N·m, why it is there, and how it was worked out. */
export interface BandLimit {
  readonly torque: number;
  readonly reason: string;
  /** The class that it was worked out for. */
  readonly forClass: string;
  readonly steps: readonly CalculationStep[];
}

/**
 * Between which torques a joint is usually tightened. Below `low` lies what is rarely meant, above `high` what no table recommends,
 * above `proof` what stretches the weakest part for good even where most of the torque is lost to friction.
 */
export interface TorqueBand {
  /** The part that limits the joint; `unknown` where no class is, and the band is that of all classes. */
  readonly governedBy: JointPart | 'unknown';
  readonly low: BandLimit;
  readonly high: BandLimit;
  readonly proof: BandLimit;
}

/** Coefficients of friction that the ends of a band are worked out with (common practice; VDI 2230 has the same range). */
export const usualFriction = {
  /** Oiled, or coated so that it slides. */
  lubricated: 0.1,
  /** As delivered, lightly oiled: what most published torque tables assume. */
  asDelivered: 0.14,
  /** Clean and dry. */
  dry: 0.2,
} as const;

/** Share of the yield stress that torque tables use (VDI 2230). */
const tableUtilisation = 0.9;
/** Published tables for the same friction differ by this much: among them older, stronger-rounded and ones for other heads. */
const spreadOfTables = 1.1;
/** Thin shafts, soft housings and seals are rightly tightened far below what the bolt takes: common practice, no source. */
const lowestShare = 0.3;

/**
 * The band of a joint, for the weakest of the parts whose class is known; for every class of ISO 898-1 at once where none is.
 * Undefined where a class has no strength for this diameter.
 */
export function torqueBand(joint: Joint): TorqueBand | undefined {
  if (joint.parts.length === 0) return bandOfAnyClass(joint);
  const weakest = weakestPart(joint);
  if (weakest === undefined) return undefined;
  const { part, strength } = weakest;
  const forClass = formatPropertyClass(part.propertyClass);
  return bandOf(joint, part, { name: forClass, strength }, { name: forClass, strength });
}

/** The part that gives way first: the one with the lowest yield stress; undefined where the strength of one is unknown. */
export function weakestPart(
  joint: Pick<Joint, 'thread' | 'parts'>,
): { readonly part: JointPart; readonly strength: Strength } | undefined {
  const found = joint.parts.flatMap((part) => {
    const strength = strengthOf(part.propertyClass, joint.thread.diameter);
    return strength === undefined ? [] : [{ part, strength }];
  });
  if (found.length < joint.parts.length) return undefined;
  return found.reduce<(typeof found)[number] | undefined>(
    (least, one) => (least === undefined || one.strength.yield < least.strength.yield ? one : least),
    undefined,
  );
}

interface NamedStrength {
  readonly name: string;
  readonly strength: Strength;
}

function bandOfAnyClass(joint: Joint): TorqueBand | undefined {
  const named = (name: IsoBoltClass) => {
    const strength = strengthOf({ system: 'ISO 898-1', name }, joint.thread.diameter);
    return strength && { name, strength };
  };
  const [weak, strong] = [named(weakestSteelClass), named(strongestSteelClass)];
  return weak && strong && bandOf(joint, 'unknown', weak, strong);
}

function bandOf(
  joint: Joint,
  governedBy: TorqueBand['governedBy'],
  weak: NamedStrength,
  strong: NamedStrength,
): TorqueBand {
  return { governedBy, low: lowLimit(joint, weak), high: highLimit(joint, strong), proof: proofLimit(joint, strong) };
}

function lowLimit(joint: Joint, { name, strength }: NamedStrength): BandLimit {
  const usual = torqueAtUtilisation(strength, tableUtilisation, tighteningWith(joint, usualFriction.lubricated));
  const torque = lowestShare * usual.value;
  const last = step('M_low', 'lowest usual torque', '0.3·M_A', torque, 'N·m');
  const reason = `less than three tenths of what a table gives for class ${name}${frictionWords(joint, 'with lubricated threads')}`;
  return { torque, reason, forClass: name, steps: [...usual.steps, last] };
}

function highLimit(joint: Joint, { name, strength }: NamedStrength): BandLimit {
  const usual = torqueAtUtilisation(strength, tableUtilisation, tighteningWith(joint, usualFriction.asDelivered));
  const torque = spreadOfTables * usual.value;
  const last = step('M_high', 'highest usual torque', '1.1·M_A', torque, 'N·m');
  const reason = `more than a tenth above the torque that uses class ${name} to 90 % of its yield stress${frictionWords(joint, 'with threads as delivered')}`;
  return { torque, reason, forClass: name, steps: [...usual.steps, last] };
}

function proofLimit(joint: Joint, { name, strength }: NamedStrength): BandLimit {
  const reached = torqueReaching('proof', strength, tighteningWith(joint, usualFriction.dry));
  const stress = strength.proofFrom === 'standard' ? 'proof load' : 'load at the yield stress';
  const reason = `the preload is above the ${stress} of class ${name}${frictionWords(joint, 'even with dry threads')}`;
  return { torque: reached.value, reason, forClass: name, steps: reached.steps };
}

function tighteningWith({ thread, face, friction }: Joint, usual: number): Tightening {
  return friction.kind === 'stated'
    ? { thread, face, threadFriction: friction.thread, faceFriction: friction.face }
    : { thread, face, threadFriction: usual, faceFriction: usual };
}

function frictionWords({ friction }: Joint, words: string): string {
  return friction.kind === 'stated' ? ' at the stated friction' : ` ${words}`;
}

/** Where a torque in N·m lies in a band. */
export function placeInBand(torque: number, band: TorqueBand): 'below' | 'within' | 'above' | 'above-proof' {
  // Stated friction is low enough now and then for proof to come before what tables give.
  if (torque > band.proof.torque) return 'above-proof';
  if (torque > band.high.torque) return 'above';
  return torque < band.low.torque ? 'below' : 'within';
}
