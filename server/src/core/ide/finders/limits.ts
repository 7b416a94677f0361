import type { FamilyView } from '../../analysis/familyView';
import { withExactUnits } from '../../workings/exactUnits';
import { limitCases } from '../../workings/limitCases';
import { limitWorking, limitWorkingsOf } from '../../workings/limitWorking';
import type { PlaceValue } from '../place';
import { type Finder, type FoundWorking, finder, foundEverywhere, foundOn } from './finder';

export const limitFinders: readonly Finder[] = [
  finder('limit', ['id', 'accept', 'from'], ({ family, id }, { value }) => limitsFound(family, id, value)),
  finder('instruction', ['measure', 'accept'], ({ procedure: { family }, view: { instruction } }) => {
    const id = instruction.verb === 'measure' ? instruction.measure?.id : undefined;
    return family === undefined || id === undefined ? [] : limitsFound(family, id, { is: 'whole' });
  }),
];

/** All stack-ups of a limit, or those against the value that is pointed at. */
function limitsFound(family: FamilyView, id: string, value: PlaceValue): FoundWorking[] {
  if (family.value.limits?.some((limit) => limit.id.id === id) !== true) return [];
  const cases = limitCases(family, id);
  if (cases.length === 0) return limitWorkingsOf(family, id).map(foundEverywhere);
  const pointed = cases.filter(({ accept }) => value.is === 'quantity' && accept === value.value);
  return (pointed.length > 0 ? pointed : cases).map((one) =>
    foundOn(withExactUnits(limitWorking(one), one.accept), one.where, one.space),
  );
}

/** The stack-ups that a dimension is part of. */
export function limitsWith(family: FamilyView, dimension: string): FoundWorking[] {
  const limits = (family.value.limits ?? []).filter(({ value }) =>
    value.from?.some(({ term }) => 'id' in term && term.id === dimension),
  );
  return limits.flatMap(({ id }) => limitsFound(family, id.id, { is: 'whole' }));
}
