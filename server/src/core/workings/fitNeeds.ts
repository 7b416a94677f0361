import type { FamilyView } from '../analysis/familyView';
import type { Part } from '../model/generated/types';
import {
  coolingToFit,
  type FittingTemperature,
  heatingOntoCooledShaft,
  heatingToFit,
  type ShrinkFit,
} from '../standards/thermalExpansion';
import { type Expansion, expansionOfPart } from './fitExpansion';
import type { FitCase } from './fitSizes';

/**
 * Lengths hold at 20 °C (ISO 1:2022), and what is neither heated nor cooled is taken to be at that. A warmer shop needs
 * more heat, so what is too little at 20 °C is too little everywhere.
 */
export const ambient = 20;

/** How the parts of a fit are put together: which of them is warm, and how cold the other one is where it was cooled. */
export type FitMethod =
  | {
      readonly is: 'heated';
      readonly outer: string;
      readonly coldShaft?: { readonly part: string; readonly at: number };
    }
  | { readonly is: 'cooled'; readonly inner: string };

/** The temperature that a fit needs, or what nobody states and is needed for it. */
export type FitNeed =
  | {
      readonly known: true;
      readonly part: string;
      readonly needed: FittingTemperature;
      readonly expansions: readonly Expansion[];
    }
  | { readonly known: false; readonly missing: readonly string[] };

/** The temperature that a part of a fit has to be heated or cooled to. */
export function fitNeed(family: FamilyView, one: FitCase, method: FitMethod): FitNeed {
  if (method.is === 'cooled') return cooling(family, one, method.inner);
  const { outer, coldShaft } = method;
  if (coldShaft !== undefined) return heatingOntoCold(family, one, outer, coldShaft);
  const expansion = expansionIn(family, outer);
  return expansion === undefined
    ? lacking(family, [outer])
    : known(outer, heatingToFit(shrinkFit(one), expansion.perKelvin), [expansion]);
}

/** How a part is fitted, where the family says that it is heated or cooled before. */
export function usualMethod(id: string, { beforeFitting }: Part): FitMethod | undefined {
  if (beforeFitting?.some(({ value }) => value === 'heat') === true) return { is: 'heated', outer: id };
  return beforeFitting?.some(({ value }) => value === 'cool') === true ? { is: 'cooled', inner: id } : undefined;
}

function cooling(family: FamilyView, one: FitCase, inner: string): FitNeed {
  const expansion = expansionIn(family, inner);
  if (expansion === undefined) return lacking(family, [inner]);
  return known(inner, coolingToFit(shrinkFit(one), expansion.perKelvin), [expansion]);
}

function heatingOntoCold(
  family: FamilyView,
  one: FitCase,
  outer: string,
  { part, at }: { readonly part: string; readonly at: number },
): FitNeed {
  const [own, cold] = [expansionIn(family, outer), expansionIn(family, part)];
  if (own === undefined || cold === undefined) {
    return lacking(family, [...(own === undefined ? [outer] : []), ...(cold === undefined ? [part] : [])]);
  }
  const needed = heatingOntoCooledShaft(shrinkFit(one), own.perKelvin, cold.perKelvin, Math.min(at, ambient));
  return known(outer, needed, [own, cold]);
}

function expansionIn(family: FamilyView, id: string): Expansion | undefined {
  const part = family.part(id);
  return part && expansionOfPart(part);
}

function known(part: string, needed: FittingTemperature | undefined, expansions: readonly Expansion[]): FitNeed {
  if (needed === undefined) return { known: false, missing: ['a temperature at which the parts would go together'] };
  return { known: true, part, needed, expansions };
}

function lacking(family: FamilyView, ids: readonly string[]): FitNeed {
  return { known: false, missing: ids.map((id) => `the expansion of the ${family.nameOf(id)}, in 10⁻⁶/K`) };
}

function shrinkFit({ bore, shaft, clearance }: FitCase): ShrinkFit {
  return { bore: bore.bounds, shaft: shaft.bounds, clearance, ambient };
}
