import type { Prose } from '../../model/values';
import { type BareTorque, type FoundQuantity, findBareTorques, findQuantities } from '../../quantity';
import { rememberedByText } from '../../text/byText';

const NUMBER = /[\d½¼¾⅛⅜⅝⅞]/;
const NONE: readonly never[] = [];
const findQuantitiesOnce = rememberedByText(findQuantities);
const findBareTorquesOnce = rememberedByText(findBareTorques);

/** The numbers with a unit in a text; searched once, as several rules ask. */
export function quantitiesIn({ text }: Prose): readonly FoundQuantity[] {
  return NUMBER.test(text) ? findQuantitiesOnce(text) : NONE;
}

/** The torques in a text that lack a unit or have one that says too little. */
export function bareTorquesIn({ text }: Prose): readonly BareTorque[] {
  return NUMBER.test(text) ? findBareTorquesOnce(text) : NONE;
}
