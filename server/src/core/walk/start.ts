import type { BuildSet } from '../builds';
import type { Walker } from './walker';

/** Puts the unit as the procedure receives it: assembled, in parts, or as one of the family's assemblies. */
export function startOf(walker: Walker): void {
  const { unit, state } = walker;
  const starts = unit.procedure.value.starts?.id ?? 'assembled';
  const assembly = unit.family.value.assemblies?.find((one) => one.id.id === starts)?.value;
  const members = assembly === undefined ? undefined : new Set((assembly.parts ?? []).map((ref) => ref.id));
  for (const id of unit.ids) {
    const here = unit.presence(id, 'received');
    const fitted = starts === 'parts' || unit.part(id)?.temporary?.value === true || members?.has(id) === false;
    if (!fitted) state.change(id, here, ['fitted', 'partly', 'torqued']);
    state.change(id, newHere(walker, id, here), ['fresh']);
  }
}

/** What the unit does not come with is new when it is fitted. */
function newHere(walker: Walker, id: string, received: BuildSet): BuildSet {
  return walker.unit.presence(id, 'finished').minus(received);
}
