import type { FamilyView } from '../analysis/familyView';
import { type HeldValue, heldValues, meetings } from '../analysis/heldValues';
import { presentBuilds } from '../analysis/presentBuilds';
import type { BuildSet, BuildSpace } from '../builds';
import type { Part } from '../model/generated/types';
import type { QuantityValue, Ref } from '../model/values';
import { type Bounds, boundsOf, findUnit, type Unit } from '../quantity';
import { type Fit, fitOfSizes, type LimitsOfSize, limitsOfSize } from '../standards/limitsAndFits';
import { readToleranceCode } from '../standards/toleranceCode';
import { dimensionOf } from './limitChain';

/** A diameter of a fit, in millimetres, with where it is stated. */
export interface FitSize {
  readonly bounds: Bounds;
  readonly text: string;
  /** Of a dimension, of the class of the fit, or of the other diameter and the interference that the fit states. */
  readonly from: 'dimension' | 'class' | 'interference';
  /** The value of the dimension. */
  readonly value: QuantityValue | undefined;
}

/** A fit of a part on the builds on which both diameters have one value. */
export interface FitCase {
  readonly part: string;
  readonly other: string | undefined;
  readonly where: BuildSet;
  readonly space: BuildSpace;
  readonly bore: FitSize;
  readonly shaft: FitSize;
  readonly fit: Fit;
  /** The unit that the bore is written in. */
  readonly unit: Unit;
  /** Clearance wanted while the parts are put together, in millimetres; 0 where none is stated. */
  readonly clearance: number;
  /** The class that a diameter is taken from where no dimension states it. */
  readonly assumed: string | undefined;
}

type SizeOnBuilds = HeldValue<FitSize>;

/** Hole and shaft that the class of a fit allows; undefined where it names no size, or classes that are not in the table. */
export interface ClassSizes {
  readonly hole: LimitsOfSize;
  readonly shaft: LimitsOfSize;
}

/** Every fit of a part, by build; none where a diameter is stated nowhere. */
export function fitCases(family: FamilyView, id: string, space: BuildSpace): FitCase[] {
  const part = family.part(id);
  const { fit } = part ?? {};
  const unit = findUnit('length', 'mm');
  if (part === undefined || fit === undefined || unit === undefined) return [];
  const within = presentBuilds(family, space, id);
  const classes = classSizes(part);
  const [ownBores, ownShafts] = [
    sizes(family, fit.bore, classes?.hole, space, within),
    sizes(family, fit.shaft, classes?.shaft, space, within),
  ];
  const bores = fit.bore === undefined && classes === undefined ? across(ownShafts, part, 'bore') : ownBores;
  const shafts = fit.shaft === undefined && classes === undefined ? across(ownBores, part, 'shaft') : ownShafts;
  return [...meetings(bores, shafts)].map(({ first: bore, second: shaft, where }) => ({
    part: id,
    other: otherPart(part),
    where,
    space,
    bore,
    shaft,
    fit: fitOfSizes(limits(bore), limits(shaft)),
    unit: (bore.value ?? shaft.value)?.reading.quantity?.unit ?? unit,
    clearance: clearanceOf(part),
    assumed: bore.from === 'class' || shaft.from === 'class' ? fit.class?.text : undefined,
  }));
}

/** The part that it is fitted to: as stated, or the one that it sits on where there is only one. */
export function otherPart({ fit, sitsOn }: Part): string | undefined {
  return fit?.with?.id ?? (sitsOn?.length === 1 ? sitsOn[0]?.ref.id : undefined);
}

/** What the class of a fit comes to; it has to name the size and both classes: `25 H7/p6`. */
export function classSizes({ fit }: Part): ClassSizes | undefined {
  const code = readToleranceCode(fit?.class?.text ?? '');
  if (code?.kind !== 'fit' || code.nominal === undefined) return undefined;
  const [hole, shaft] = [limitsOfSize(code.nominal, code.hole), limitsOfSize(code.nominal, code.shaft)];
  return hole === undefined || shaft === undefined ? undefined : { hole, shaft };
}

function sizes(
  family: FamilyView,
  ref: Ref | undefined,
  ofClass: LimitsOfSize | undefined,
  space: BuildSpace,
  within: BuildSet,
): SizeOnBuilds[] {
  if (ref === undefined) return ofClass === undefined ? [] : [{ value: fromClass(ofClass), where: within }];
  return heldValues(dimensionOf(family, ref.id), space, within).held.flatMap(({ value, where }): SizeOnBuilds[] => {
    const { quantity } = value.reading;
    const bounds = quantity?.dimension === 'length' ? boundsOf(quantity) : undefined;
    if (bounds === undefined || !Number.isFinite(bounds.lowest) || !Number.isFinite(bounds.highest)) return [];
    return bounds.lowest > 0 ? [{ value: { bounds, text: value.text.trim(), from: 'dimension', value }, where }] : [];
  });
}

function fromClass({ smallest, largest }: LimitsOfSize): FitSize {
  const bounds = { lowest: smallest, nominal: (smallest + largest) / 2, highest: largest };
  return { bounds, text: `${smallest}..${largest} mm`, from: 'class', value: undefined };
}

/** The other diameter of a fit that states one and its interference, so that both ends of the interference come out. */
function across(known: readonly SizeOnBuilds[], { fit }: Part, is: 'bore' | 'shaft'): SizeOnBuilds[] {
  const quantity = fit?.interference?.reading.quantity;
  if (quantity?.dimension !== 'length') return [];
  const { lowest, highest } = boundsOf(quantity);
  if (!Number.isFinite(lowest) || !Number.isFinite(highest)) return [];
  const text = `the other diameter with ${fit?.interference?.text.trim() ?? ''} of interference`;
  return known.map(({ value, where }) => {
    const ends =
      is === 'shaft'
        ? [value.bounds.highest + lowest, value.bounds.lowest + highest]
        : [value.bounds.highest - highest, value.bounds.lowest - lowest];
    const [least = 0, greatest = 0] = ends;
    const bounds = { lowest: least, nominal: (least + greatest) / 2, highest: greatest };
    return { value: { bounds, text, from: 'interference', value: undefined }, where };
  });
}

function limits({ bounds }: FitSize): { smallest: number; largest: number } {
  return { smallest: bounds.lowest, largest: bounds.highest };
}

/** The least that is wanted; of `≤ 0.003 mm` nothing. */
function clearanceOf({ fit }: Part): number {
  const quantity = fit?.clearance?.reading.quantity;
  const least = quantity?.dimension === 'length' ? boundsOf(quantity).lowest : 0;
  return Number.isFinite(least) ? Math.max(0, least) : 0;
}
