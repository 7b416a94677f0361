import { objectIds } from '../../analysis/instructions';
import type { EntryLines } from '../../rules/support/walkFixes/block';
import type { StandingUnit } from '../completion/rankingState';
import type { TakenApart } from './takenApart';

/**
 * A part that was marked before it came off is aligned to what it was marked across, once that is in place, unless one of the
 * two is a new one.
 */
export function alignment(
  { part, scene }: TakenApart,
  { unit, state }: StandingUnit,
  apart: readonly TakenApart[],
): EntryLines[] {
  const { where } = scene.failure;
  const partner = state.lane(part).misaligned.overlaps(where) ? partnerOf(part, scene) : undefined;
  if (partner === undefined) return [];
  const parts = apart.map((one) => one.part);
  const isFittedFirst = parts.includes(partner) && parts.indexOf(partner) < parts.indexOf(part);
  if (!isFittedFirst && partner !== unit.base && !state.lane(partner).partly.overlaps(where)) return [];
  const mayBeNew = (id: string): boolean =>
    unit.part(id)?.renew?.value === 'on-condition' &&
    state.lane(id).disturbed.and(state.lane(id).decided).overlaps(where);
  const unless = [part, partner].filter(mayBeNew).map((id) => `${id}=renewed`);
  const condition = unless.length > 1 ? [`unless: [${unless.join(', ')}]`] : unless.map((one) => `unless: ${one}`);
  return [[`align: ${part}`, `to: ${partner}`, ...condition]];
}

/** What the part was marked across to, or what was marked across to it. */
function partnerOf(part: string, { places }: TakenApart['scene']): string | undefined {
  for (const { view } of places) {
    const { instruction } = view;
    if (instruction.verb !== 'mark') continue;
    const marked = objectIds(instruction);
    const across = (instruction.across ?? []).map(({ id }) => id);
    if (marked.includes(part)) return across[0];
    if (across.includes(part)) return marked[0];
  }
  return undefined;
}
