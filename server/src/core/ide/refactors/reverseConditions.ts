import type { BuildSet } from '../../builds';
import type { EntryLines } from '../../rules/support/walkFixes/block';
import { conditionsBeside } from '../../rules/support/walkFixes/conditions';
import type { Place } from '../../rules/support/walkFixes/scene';
import { line } from '../../rules/support/walkFixes/tightening';
import type { StandingUnit } from '../completion/rankingState';
import type { TakenApart } from './takenApart';

/** The condition that holds for just some builds, as lines; none where it holds for all or cannot be said in two names. */
export function conditionFor({ place, scene }: TakenApart, where: BuildSet): EntryLines {
  const { everything } = scene.procedure.space;
  if (where.isEverything) return [];
  const wide: Place = {
    ...place,
    step: { ...place.step, where: everything },
    view: { ...place.view, where: everything },
  };
  const [exact = []] = conditionsBeside(scene, wide, true, where);
  return exact;
}

/**
 * The conditions of an instruction for one of several parts: those of the instruction that took it off, or else of the builds
 * to which it belongs, where it comes off on others too.
 */
export function conditionsOfPart(one: TakenApart, { unit }: StandingUnit, isOnly: boolean): EntryLines {
  const { part, place, isAlone } = one;
  const own = isAlone ? [...(line(place, 'when') ?? []), ...(line(place, 'unless') ?? [])] : [];
  if (own.length > 0 || isOnly) return own;
  const belongs = unit.presence(part, 'finished');
  return unit.everPresent(part).isWithin(belongs) ? [] : conditionFor(one, belongs);
}
