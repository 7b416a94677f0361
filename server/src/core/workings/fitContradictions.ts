import type { FamilyView } from '../analysis/familyView';
import type { BuildSet } from '../builds';
import type { QuantityValue, Text } from '../model/values';
import { boundsOf } from '../quantity';
import { readToleranceCode } from '../standards/toleranceCode';
import { classSizes, type FitCase, type FitSize, fitCases } from './fitSizes';

/** What a fit states that its dimensions contradict. */
export type FitContradiction = { readonly where: BuildSet; readonly fit: FitCase } & (
  | { readonly is: 'interference'; readonly stated: QuantityValue }
  /** Hole or shaft of the class against the dimension; `allowed` are its smallest and largest size in mm. */
  | {
      readonly is: 'class';
      readonly stated: Text;
      readonly of: 'bore' | 'shaft';
      readonly allowed: readonly [number, number];
    }
  /** Bore and shaft are no diameters of one size. */
  | { readonly is: 'sizes' }
);

/** A micrometre is lost in writing an inch to four places. */
const lost = 0.00101;

/** No fit is so tight or so loose; what differs more is a slip of a digit or a unit. As a share of the bore; our own choice. */
const sameSize = 0.03;

/** Everything that the fit of a part states and its dimensions contradict, by build. */
export function fitContradictions(family: FamilyView, id: string): FitContradiction[] {
  const part = family.part(id);
  if (part?.fit === undefined) return [];
  const { interference, class: written } = part.fit;
  const classes = classSizes(part);
  return fitCases(family, id, family.space).flatMap((fit): FitContradiction[] => {
    const { where, bore, shaft } = fit;
    if (!isOneSize(fit)) return [{ where, fit, is: 'sizes' }];
    const found: FitContradiction[] = [];
    const worked = bore.from === 'interference' || shaft.from === 'interference';
    if (interference !== undefined && !worked && !allowsInterference(interference, fit)) {
      found.push({ where, fit, is: 'interference', stated: interference });
    }
    if (written === undefined || classes === undefined) return found;
    for (const [of, size, limits] of [
      ['bore', bore, classes.hole],
      ['shaft', shaft, classes.shaft],
    ] as const) {
      const allowed = [limits.smallest, limits.largest] as const;
      if (size.value !== undefined && !liesIn(size, allowed)) {
        found.push({ where, fit, is: 'class', stated: written, of, allowed });
      }
    }
    return found;
  });
}

/** A class that names no fit with its size, so that nothing can be worked out from it. */
export function unreadableClass(text: string): boolean {
  const code = readToleranceCode(text);
  return code?.kind !== 'fit';
}

function isOneSize({ bore, shaft }: FitCase): boolean {
  return Math.abs(shaft.bounds.nominal - bore.bounds.nominal) <= sameSize * bore.bounds.nominal;
}

/** The dimensions may allow less than is stated, for the drawing may round; more contradicts it. */
function allowsInterference({ reading: { quantity } }: QuantityValue, { fit }: FitCase): boolean {
  if (quantity?.dimension !== 'length') return true;
  const { lowest, highest } = boundsOf(quantity);
  const [least, greatest] = [-fit.greatestClearance, -fit.leastClearance];
  if (quantity.form === 'single' && quantity.tolerance.kind === 'none') {
    return least <= highest + lost && greatest >= lowest - lost;
  }
  return least >= lowest - lost && greatest <= highest + lost;
}

function liesIn({ bounds }: FitSize, [smallest, largest]: readonly [number, number]): boolean {
  return bounds.lowest >= smallest - lost && bounds.highest <= largest + lost;
}
