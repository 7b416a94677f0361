import type { Part } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { type Bounds, boundsOf, hasTolerance, type Unit } from '../quantity';
import { sectionTolerance } from '../standards/oRingSizes';
import {
  fillOf,
  greatestFill,
  greatestStretch,
  type PercentRange,
  recommendedSqueeze,
  type Squeeze,
  squeezeOf,
  stretchOf,
} from '../standards/oRings';

/** An O-ring in its groove, as far as the family states it; lengths in millimetres. */
export interface SealCase {
  readonly section: Bounds;
  readonly unit: Unit;
  /** The tolerance of the section is that of the standard, since none is stated; millimetres. */
  readonly assumedTolerance: number | undefined;
  readonly motion: 'static' | 'dynamic';
  /** The family does not say whether the joint moves. */
  readonly motionAssumed: boolean;
  readonly squeeze: Squeeze | undefined;
  readonly stretch: PercentRange | undefined;
  /** Where the floor of the groove lies: inside the ring, or around it as in a bore. */
  readonly floor: 'inside' | 'around' | undefined;
  readonly fill: PercentRange | undefined;
}

/** What the recommended squeeze is exceeded by. */
export type SqueezeVerdict = 'open' | 'little' | 'much' | 'inside';

/** Undefined where the part has no section that can be read. */
export function sealCase({ section: written, insideDiameter, groove }: Part): SealCase | undefined {
  const stated = boundsIn(written);
  const unit = written?.reading.quantity?.unit;
  if (written === undefined || stated === undefined || unit === undefined) return undefined;
  const assumedTolerance = toleranceOf(written, stated);
  const section = assumedTolerance === undefined ? stated : widened(stated, assumedTolerance);
  const [depth, width, diameter] = [boundsIn(groove?.depth), boundsIn(groove?.width), boundsIn(groove?.diameter)];
  const inside = boundsIn(insideDiameter);
  return {
    section,
    unit,
    assumedTolerance,
    motion: groove?.motion?.value ?? 'static',
    motionAssumed: groove?.motion?.value === undefined,
    squeeze: depth && squeezeOf(section, depth),
    stretch: inside && diameter && stretchOf(inside, diameter),
    floor: inside && diameter && floorOf(inside, diameter, section),
    fill: depth && width && fillOf(section, depth, width),
  };
}

/** Against the band that a guide to seal design recommends. */
export function squeezeVerdict({ squeeze, motion }: SealCase): SqueezeVerdict | undefined {
  if (squeeze === undefined) return undefined;
  const { least, greatest } = recommendedSqueeze[motion];
  if (squeeze.leastPercent <= 0) return 'open';
  if (squeeze.leastPercent < least) return 'little';
  return squeeze.greatestPercent > greatest ? 'much' : 'inside';
}

/** Whether a ring on a shaft is stretched more than it may be in its place; a ring in a bore is not stretched at all. */
export function isOverstretched({ stretch, floor }: SealCase): boolean {
  return floor === 'inside' && stretch !== undefined && stretch.greatest > greatestStretch.inPlace;
}

export function isOverfilled({ fill }: SealCase): boolean {
  return fill !== undefined && fill.greatest > greatestFill;
}

/** The bounds of a length; undefined where it is none, or is limited on one side only. */
function boundsIn(value: QuantityValue | undefined): Bounds | undefined {
  const quantity = value?.reading.quantity;
  if (quantity?.dimension !== 'length') return undefined;
  const bounds = boundsOf(quantity);
  return Number.isFinite(bounds.lowest) && Number.isFinite(bounds.highest) ? bounds : undefined;
}

/** Of a section without a tolerance, the one that the standard gives to a section of that size. */
function toleranceOf({ reading: { quantity } }: QuantityValue, { nominal }: Bounds): number | undefined {
  return quantity === undefined || hasTolerance(quantity) ? undefined : sectionTolerance(nominal);
}

function widened({ nominal }: Bounds, tolerance: number): Bounds {
  return { lowest: nominal - tolerance, nominal, highest: nominal + tolerance };
}

/**
 * A floor that lies about where the outside of the ring is, is that of a groove in a bore; there the ring is pressed
 * together a little (up to 2 % by the same guide, here to 3 % for rounding) and not stretched.
 */
function floorOf(inside: Bounds, diameter: Bounds, section: Bounds): 'inside' | 'around' {
  const outside = inside.nominal + 2 * section.nominal;
  return diameter.nominal > 0.97 * outside ? 'around' : 'inside';
}
