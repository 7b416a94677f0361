import { boundsOf, type Quantity, type Statement, type Unit } from '../quantity';
import type { IsoBoltClass } from '../standards/strengthTables';
import { type Joint, placeInBand, type TorqueBand, torqueBand } from '../standards/torqueBand';
import { tradeUnits } from './torqueUnits';

/** A torque against the band of its joint. */
export interface TorqueJudgement {
  /** The torque in N·m; the middle of a range. */
  readonly torque: number;
  readonly band: TorqueBand;
  readonly place: 'below' | 'within' | 'above' | 'above-proof';
  /** Other units of the trade in which the number would be right, the likeliest first. */
  readonly rightIn: readonly Unit[];
  /**
   * Whether it is to be told: every torque above the band; one below only where a slip of the unit explains it, since thin
   * shafts, soft housings and seals are rightly tightened far below what the thread takes.
   */
  readonly implausible: boolean;
}

/** Where a slip of the unit is looked for, and between which torques the number then has to lie; in N·m. */
interface SlipLimits {
  readonly above: number;
  readonly below: number;
  readonly farBelow: number;
  readonly low: number;
  readonly high: number;
}

/**
 * How far below the low end a torque is no longer taken for a careful one where another unit fits. The ends are then seven
 * apart, so that a slip between newton metres and pound inches, which changes a torque nearly nine times, cannot hide.
 */
const belowShare = 2 / 3;

/**
 * So far below (a sixteenth of what a table gives) not even a seal or a snug torque lies. Whoever meant a light torque and
 * slipped is here, so that the number may lie below the band in the other unit as well.
 */
const farBelowShare = 1 / 5;
const lightShare = 1 / 3;

/**
 * Where no class is stated, the band is that of all classes and too wide for a slip to show. Slips are looked for between
 * classes 8.8 and 10.9 then, which nearly all fasteners of such units have: common practice, no source.
 */
const usualClasses: readonly [IsoBoltClass, IsoBoltClass] = ['8.8', '10.9'];
const belowShareOfUsual = 0.6;

/** Units that differ by less are not mistaken for one another without the torque staying usable. */
const leastSlip = 1.2;

/** Whether a low torque is looked at; left `open` where a thread seals, or an angle is turned on from a snug torque. */
export type LowEnd = 'looked-at' | 'open';

/** Judges a torque for a joint; undefined where the joint has no band, or the quantity is no torque. */
export function judgeTorque(
  quantity: Quantity | Statement,
  joint: Joint,
  lowEnd: LowEnd = 'looked-at',
): TorqueJudgement | undefined {
  const band = bandOf(joint);
  const torque = boundsOf(quantity).nominal;
  if (band === undefined || quantity.dimension !== 'torque' || !(torque > 0)) return undefined;
  const place = placeInBand(torque, band);
  const limits = slipLimits(joint, band);
  const mayBeLow = lowEnd === 'open' || quantity.form === 'torque-angle';
  const meantFrom = leastMeant(torque, limits, mayBeLow);
  const rightIn = meantFrom === undefined ? [] : unitsThatFit(quantity, torque, meantFrom, limits.high);
  const implausible = place === 'above' || place === 'above-proof' || rightIn.length > 0;
  return { torque, band, place, rightIn, implausible };
}

/** What the number has to come to at least in the unit that was meant; undefined where there is no need to look for one. */
function leastMeant(torque: number, limits: SlipLimits, mayBeLow: boolean): number | undefined {
  if (torque > limits.above) return limits.low;
  if (torque < limits.farBelow) return lightShare * limits.low;
  return torque < limits.below && !mayBeLow ? limits.low : undefined;
}

function unitsThatFit({ unit }: Statement, torque: number, from: number, to: number): readonly Unit[] {
  return tradeUnits.filter((other) => {
    const factor = other.factor / unit.factor;
    if (factor < leastSlip && factor > 1 / leastSlip) return false;
    const meant = torque * factor;
    return meant >= from && meant <= to;
  });
}

const rememberedLimits = new WeakMap<Joint, SlipLimits>();

function slipLimits(joint: Joint, band: TorqueBand): SlipLimits {
  const limits = rememberedLimits.get(joint) ?? limitsFor(joint, band);
  rememberedLimits.set(joint, limits);
  return limits;
}

function limitsFor(joint: Joint, { governedBy, low, high }: TorqueBand): SlipLimits {
  if (governedBy !== 'unknown') return limitsOf(low.torque, high.torque, belowShare);
  const [weaker, stronger] = usualClasses.map((name) => bandOf(ofClass(joint, name)));
  return limitsOf(weaker?.low.torque ?? low.torque, stronger?.high.torque ?? high.torque, belowShareOfUsual);
}

function limitsOf(low: number, high: number, share: number): SlipLimits {
  return { above: high, below: share * low, farBelow: farBelowShare * low, low, high };
}

function ofClass(joint: Joint, name: IsoBoltClass): Joint {
  return { ...joint, parts: [{ role: 'bolt', propertyClass: { system: 'ISO 898-1', name } }] };
}

const remembered = new WeakMap<Joint, TorqueBand | 'none'>();

/** The band of a joint, remembered with it. */
export function bandOf(joint: Joint): TorqueBand | undefined {
  const known = remembered.get(joint) ?? torqueBand(joint) ?? 'none';
  remembered.set(joint, known);
  return known === 'none' ? undefined : known;
}
