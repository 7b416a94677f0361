import type { ProcedureView } from '../analysis/procedureView';
import type { Standings } from './standing';

/** A part's place among the rows. */
export interface PlacedPart {
  readonly id: string;
  readonly depth: number;
  readonly isTemporary: boolean;
}

/** The parts that can be met, each below what carries it: the base first, temporary parts last. */
export function partsInOrder({ family }: ProcedureView, standings: Standings): PlacedPart[] {
  const met = [...(family?.parts.keys() ?? [])].filter((id) => standings.isMet(id));
  const isTemporary = (id: string): boolean => family?.part(id)?.temporary?.value === true;
  const placed = new Map<string, PlacedPart>();
  const place = (id: string, depth: number): void => {
    if (placed.has(id) || isTemporary(id)) return;
    placed.set(id, { id, depth, isTemporary: false });
    for (const rider of met) if (standings.carriers(rider)[0] === id) place(rider, depth + 1);
  };
  const base = family?.value.base?.id;
  if (base !== undefined && met.includes(base)) place(base, 0);
  for (const id of met) if (standings.carriers(id).length === 0) place(id, 0);
  // Parts that carry each other in a ring stand where the family names them.
  for (const id of met) place(id, 0);
  const temporary = met.filter(isTemporary).map((id) => ({ id, depth: 0, isTemporary: true }));
  return [...placed.values(), ...temporary];
}
