import type { FamilyView } from '../../analysis/familyView';
import { fitWorkingsOfInstruction } from '../../workings/fitJudgement';
import { usualMethod } from '../../workings/fitNeeds';
import { fitCases } from '../../workings/fitSizes';
import { fitWorking, fitWorkingsOf } from '../../workings/fitWorking';
import { quantityWorking } from '../../workings/quantityWorking';
import { type Finder, type FoundWorking, finder, foundEverywhere, foundOn } from './finder';
import { limitsWith } from './limits';

export const fitFinders: readonly Finder[] = [
  finder('part', ['fit', 'material', 'expansion', 'max-temperature'], ({ family, id }) => fitsFound(family, id)),
  finder('instruction', ['install', 'heat', 'cool', 'until'], ({ procedure, view }) =>
    fitWorkingsOfInstruction(procedure, view.instruction).map(foundEverywhere),
  ),
  // A dimension is there for what hangs on it.
  finder('dimension', 'all', ({ family, id }, { value }) => {
    const quantity = value.is === 'quantity' ? value.value.reading.quantity : undefined;
    const own = quantity === undefined ? undefined : quantityWorking(quantity);
    return [...(own === undefined ? [] : [foundEverywhere(own)]), ...limitsWith(family, id), ...fitsWith(family, id)];
  }),
];

function fitsFound(family: FamilyView, id: string): FoundWorking[] {
  const part = family.part(id);
  const cases = fitCases(family, id, family.space);
  if (part === undefined || cases.length === 0) return fitWorkingsOf(family, id).map(foundEverywhere);
  return cases.map((one) => foundOn(fitWorking(family, one, usualMethod(id, part)), one.where, one.space));
}

/** The fits of which a dimension is the bore or the shaft. */
function fitsWith(family: FamilyView, dimension: string): FoundWorking[] {
  const parts = [...family.parts].filter(
    ([, { value }]) => value.fit?.bore?.id === dimension || value.fit?.shaft?.id === dimension,
  );
  return parts.flatMap(([id]) => fitsFound(family, id));
}
