import type { Prose } from '../../model/values';
import { type BareTorque, type FoundQuantity, findBareTorques, findQuantities } from '../../quantity';

const NUMBER = /[\d½¼¾⅛⅜⅝⅞]/;
const quantities = new WeakMap<Prose, readonly FoundQuantity[]>();
const bareTorques = new WeakMap<Prose, readonly BareTorque[]>();

/** The numbers with a unit in a text; searched once, as several rules ask. */
export function quantitiesIn(prose: Prose): readonly FoundQuantity[] {
  if (!NUMBER.test(prose.text)) return [];
  const found = quantities.get(prose) ?? findQuantities(prose.text);
  quantities.set(prose, found);
  return found;
}

/** The torques in a text that lack a unit or have one that says too little. */
export function bareTorquesIn(prose: Prose): readonly BareTorque[] {
  if (!NUMBER.test(prose.text)) return [];
  const found = bareTorques.get(prose) ?? findBareTorques(prose.text);
  bareTorques.set(prose, found);
  return found;
}
