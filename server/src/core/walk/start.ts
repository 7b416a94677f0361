import { withMore } from './tally';
import type { Walker } from './walker';

/** Puts the unit as the procedure receives it: assembled, in parts, or as one of the family's assemblies. */
export function startOf({ unit, state }: Walker): void {
  const starts = unit.procedure.value.starts?.id ?? 'assembled';
  const members = assemblyOf(unit, starts);
  for (const id of unit.ids) {
    const here = unit.presence(id, 'received');
    const off =
      (starts === 'parts' && id !== unit.base) || unit.isTemporary(id) || (members !== undefined && !members.has(id));
    if (!off) {
      const all = withMore(new Map(), here, undefined, unit.pieces(id));
      state.count(id, { pieces: all, tight: all });
    }
    state.change(id, unit.isTemporary(id) ? unit.everPresent(id) : unit.everPresent(id).minus(here), ['fresh']);
  }
}

/** The parts of an assembly of the family. */
export function assemblyOf(unit: Walker['unit'], name: string): ReadonlySet<string> | undefined {
  const assembly = unit.family.value.assemblies?.find((one) => one.id.id === name)?.value;
  return assembly === undefined ? undefined : new Set((assembly.parts ?? []).map((ref) => ref.id));
}
