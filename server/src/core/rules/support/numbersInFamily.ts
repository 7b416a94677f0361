import type { FamilyView } from '../../analysis/familyView';
import { type Text, valuesOf } from '../../model/values';

/** A part number that a family states, and the part that has it. */
export interface NumberInFamily {
  readonly part: string;
  readonly number: Text;
}

/** The places at which a family states a part number. Gathered once for a reading of the family. */
export function numbersInFamily(family: FamilyView, number: string): readonly NumberInFamily[] {
  const known = remembered.get(family) ?? gather(family);
  remembered.set(family, known);
  return known.get(number) ?? [];
}

const remembered = new WeakMap<FamilyView, ReadonlyMap<string, readonly NumberInFamily[]>>();

function gather(family: FamilyView): Map<string, NumberInFamily[]> {
  const byNumber = new Map<string, NumberInFamily[]>();
  for (const [part, { value }] of family.parts) {
    for (const number of valuesOf(value.number)) {
      byNumber.set(number.text, [...(byNumber.get(number.text) ?? []), { part, number }]);
    }
  }
  return byNumber;
}
